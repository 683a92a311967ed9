package org.berrywatt.server.typed;

import java.util.Collection;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/** What a request must give. */
public final class Given {

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
}
