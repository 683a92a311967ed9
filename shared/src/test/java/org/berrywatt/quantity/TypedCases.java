package org.berrywatt.quantity;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/** The cases that the browser's parser reads as well; the file explains itself in its head. */
record TypedCases(List<String> about, List<Case> numbers, List<Case> areas) {

    static TypedCases read() throws IOException {
        try (InputStream file = TypedCases.class.getResourceAsStream("/quantity/typed-numbers.json")) {
            return JsonMapper.shared().readValue(file, TypedCases.class);
        }
    }

    record Case(
            String text,
            @Nullable String unit,
            @Nullable Set<String> allowed,
            String means,
            @Nullable List<Reading> readings,
            @Nullable Slip slip,
            @Nullable String value,
            @Nullable String why) {

        Set<Quantity> quantities() {
            return Stream.of(Quantity.values())
                    .filter(quantity -> allowed != null && allowed.contains(quantity.key()))
                    .collect(Collectors.toUnmodifiableSet());
        }

        List<Reading> expected() {
            return readings == null ? List.of() : readings;
        }

        @Override
        public String toString() {
            return "'" + text + "' beside " + unit + (why == null ? "" : " (" + why + ")");
        }
    }

    record Reading(
            @Nullable String text,
            String unitKey,
            double valueSi,
            @Nullable Double resolutionSi,
            @Nullable Double relativeUncertaintyPercent) {}
}
