package org.berrywatt.server.findings;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/**
 * Which cells are looked at: of every facet named, those with one of its values. A facet that a table does not have has the
 * empty value for every cell.
 */
record Filter(Map<String, Set<String>> wanted) {

    private static final int MOST_VALUES = 300;
    private static final String BETWEEN = "\t";

    /** All cells. */
    static Filter none() {
        return new Filter(Map.of());
    }

    /**
     * As it travels: a facet's key, a tab and a value, as often as needed; without a tab the value is empty, since an address may
     * lose blanks at its end.
     *
     * @throws Refusal {@code choice.unknown} for an entry without a key, or more entries than anybody ticks
     */
    static Filter of(@Nullable List<String> only) {
        if (only == null) {
            return none();
        }
        if (only.size() > MOST_VALUES) {
            throw refusal(String.valueOf(only.size()));
        }
        return new Filter(only.stream()
                .map(Filter::entry)
                .collect(Collectors.groupingBy(
                        entry -> entry.get(0), Collectors.mapping(entry -> entry.get(1), Collectors.toSet()))));
    }

    private static List<String> entry(String only) {
        int at = only.indexOf(BETWEEN);
        if (at == 0 || only.isBlank()) {
            throw refusal(Words.excerpt(only));
        }
        return at < 0 ? List.of(only, "") : List.of(only.substring(0, at), only.substring(at + 1));
    }

    private static Refusal refusal(String value) {
        return Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                .field("only")
                .value(value)
                .limit("at most " + MOST_VALUES + " times what to filter by, a tab, and a value");
    }

    boolean keeps(StudyRow row, List<Facet> facets) {
        return wanted.entrySet().stream()
                .allMatch(entry -> entry.getValue()
                        .contains(facets.stream()
                                .filter(facet -> facet.key().equals(entry.getKey()))
                                .findFirst()
                                .map(facet -> facet.of().apply(row).key())
                                .orElse("")));
    }
}
