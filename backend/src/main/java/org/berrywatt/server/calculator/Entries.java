package org.berrywatt.server.calculator;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.jspecify.annotations.Nullable;

/** Lists that a calculation is given. */
final class Entries {

    /** Makes of one entry, whose path is given, what the calculation takes. */
    @FunctionalInterface
    interface Reading<E, R> {
        R of(String path, E entry);
    }

    private Entries() {}

    /**
     * Every entry as read.
     *
     * @throws Refusal {@code value.missing} without a list or for an empty place in it, {@code calculation.listLength}
     *     for too short or too long a one; whatever the reading throws
     */
    static <E, R> List<R> read(
            String field, @Nullable List<@Nullable E> given, int fewest, int most, Reading<E, R> reading) {
        var list = Given.need(field, given);
        if (list.size() < fewest || list.size() > most) {
            throw Refusal.of(ProblemCode.CALCULATION_LIST_LENGTH)
                    .field(field)
                    .value(list.size())
                    .limit("[" + fewest + ", " + most + "]");
        }
        return IntStream.range(0, list.size())
                .mapToObj(i -> reading.of(path(field, i), Given.need(path(field, i), list.get(i))))
                .toList();
    }

    private static String path(String field, int index) {
        return field + "[" + index + "]";
    }
}
