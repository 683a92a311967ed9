package org.berrywatt.server.typed;

import java.time.LocalDate;
import java.util.Collection;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/** What a request must give. */
public final class Given {

    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2199;

    private Given() {}

    /**
     * The value itself.
     *
     * @param path the field's path in the request
     * @throws Refusal {@code value.missing} when there is none
     */
    public static <T> T need(String path, @Nullable T value) {
        if (value == null) {
            throw Refusal.of(ProblemCode.VALUE_MISSING).field(path);
        }
        return value;
    }

    /**
     * The key itself, one of the known ones.
     *
     * @throws Refusal {@code value.missing} without a key, {@code choice.unknown} for a strange one
     */
    public static String choice(String path, @Nullable String key, Collection<String> known) {
        if (known.contains(need(path, key))) {
            return need(path, key);
        }
        throw Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                .field(path)
                .value(Words.excerpt(need(path, key)))
                .limit(String.join(", ", known));
    }

    /**
     * The number itself.
     *
     * @throws Refusal {@code quantity.impossible} outside [low, high]
     */
    public static int between(String path, int value, int low, int high) {
        if (value >= low && value <= high) {
            return value;
        }
        throw Refusal.of(ProblemCode.QUANTITY_IMPOSSIBLE)
                .field(path)
                .value(value)
                .limit("[" + low + ", " + high + "]");
    }

    /**
     * The date itself.
     *
     * @throws Refusal {@code date.outOfRange} outside the years 2000 to 2199, which no lab day leaves but by a slip
     */
    public static LocalDate date(String path, LocalDate date) {
        if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
            return date;
        }
        throw Refusal.of(ProblemCode.DATE_OUT_OF_RANGE)
                .field(path)
                .value(date)
                .limit("[" + FIRST_YEAR + ", " + LAST_YEAR + "]");
    }
}
