package org.berrywatt.server.findings;

import java.util.Arrays;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** What is compared between cells. */
enum Measure {
    /** Power per area at reference conditions. */
    POWER("power"),
    /** The same over that of the day's control cell, read at the same station near in time: no light meter enters. */
    RATIO_TO_CONTROL("ratioToControl"),
    /** A column of a table. */
    OUTCOME("outcome");

    private final String key;

    Measure(String key) {
        this.key = key;
    }

    String key() {
        return key;
    }

    /** @throws Refusal {@code choice.unknown} for none that lab days have */
    static Measure ofDays(@Nullable String key) {
        return Arrays.stream(values())
                .filter(measure -> measure != OUTCOME && measure.key.equals(key))
                .findFirst()
                .orElseThrow(() -> Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                        .field("measure")
                        .value(Words.excerpt(String.valueOf(key)))
                        .limit("power, ratioToControl"));
    }
}
