package org.berrywatt.server.calculator;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.jspecify.annotations.Nullable;

/** Numbers that a field of a calculation may have. What is not within, NaN included, is refused. */
record Range(double low, boolean closedBelow, double high, boolean closedAbove, String unit) {

    /** Where 0 is allowed, less than this is 0: no meter shows it, and its square is no number. Nor has 0 a sign. */
    private static final double NOTHING = 1e-60;

    private static final double PLAIN_BELOW = 1e7;
    private static final double PLAIN_ABOVE = 1e-4;

    /** [low, high]. */
    static Range closed(double low, double high, String unit) {
        return new Range(low, true, high, true, unit);
    }

    /** [0, high). */
    static Range below(double high, String unit) {
        return new Range(0, true, high, false, unit);
    }

    /**
     * The number itself.
     *
     * @throws Refusal {@code value.missing} without a number, {@code calculation.outOfRange} for one that is not within
     */
    double need(String field, @Nullable Double value) {
        return within(field, Given.need(field, value));
    }

    /** The number, or what is taken when it was left out. */
    double or(double otherwise, String field, @Nullable Double value) {
        return value == null ? otherwise : within(field, value);
    }

    /** The number, or nothing when it was left out. */
    @Nullable
    Double maybe(String field, @Nullable Double value) {
        return value == null ? null : within(field, value);
    }

    private double within(String field, double value) {
        if (above(value) && (closedAbove ? value <= high : value < high)) {
            return Math.abs(value) > NOTHING || !above(0) ? value : 0;
        }
        throw Refusal.of(ProblemCode.CALCULATION_OUT_OF_RANGE)
                .field(field)
                .value(value)
                .limit(this);
    }

    private boolean above(double value) {
        return closedBelow ? value >= low : value > low;
    }

    /** Interval notation with the unit. */
    @Override
    public String toString() {
        var interval = (closedBelow ? "[" : "(") + shown(low) + ", " + shown(high) + (closedAbove ? "]" : ")");
        return unit.isEmpty() ? interval : interval + " " + unit;
    }

    private static String shown(double bound) {
        var size = Math.abs(bound);
        var plain = size == 0 || (size >= PLAIN_ABOVE && size < PLAIN_BELOW);
        return new DecimalFormat(plain ? "0.####" : "0.###E0", DecimalFormatSymbols.getInstance(Locale.ROOT))
                .format(bound)
                .replace('E', 'e');
    }
}
