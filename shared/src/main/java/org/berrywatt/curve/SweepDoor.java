package org.berrywatt.curve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What a sweep must be to have figures.
 *
 * @param taken points in the order given
 */
record SweepDoor(List<SweepPoint> taken) {
    private static final int FEWEST_POINTS = 5;
    private static final int FEWEST_DELIVERING = 3;
    private static final double LEAST_SPREAD = 0.1;
    /** Far beyond any cell, and short of where squares leave the range of a double. */
    private static final double LARGEST = 1e6;

    private static final double COLDEST_C = -100;
    private static final double HOTTEST_C = 200;
    private static final MathContext SHOWN = new MathContext(3);

    static void checkTemperature(double temperatureC) {
        if (!(temperatureC >= COLDEST_C && temperatureC <= HOTTEST_C)) {
            throw new IllegalArgumentException("a cell's temperature must lie in [-100, 200] °C, not " + temperatureC
                    + " °C; a warm room has 20 to 25 °C");
        }
    }

    static boolean isFinite(SweepPoint point) {
        return Math.abs(point.voltageV()) <= LARGEST && Math.abs(point.currentA()) <= LARGEST;
    }

    void checkPoints() {
        checkFinite();
        checkDelivering(taken);
    }

    private void checkDelivering(List<SweepPoint> points) {
        var delivering =
                points.stream().filter(SweepPoint::deliversPower).distinct().count();
        if (delivering < FEWEST_DELIVERING) {
            throw refused(
                    SweepFault.WRONG_QUADRANT,
                    String.valueOf(delivering),
                    "[3, ∞)",
                    new Suspects(taken).idle(),
                    "a sweep needs a number of points with voltage and current above 0 in {limit}, not {value};"
                            + " swap the leads if they are all negative");
        }
    }

    private void checkFinite() {
        var bad = new Suspects(taken).notFinite();
        if (bad != null) {
            var point = taken.get(bad);
            throw refused(
                    SweepFault.NOT_FINITE,
                    point.voltageV() + " V; " + point.currentA() + " A",
                    "[-1e6, 1e6] V; A",
                    bad,
                    "a sweep's points must lie in {limit}, not at {value}; read that point again");
        }
    }

    /** Whether points of distinct load are enough of them, and enough deliver power, to have a peak. */
    static boolean hasEnough(List<SweepPoint> along) {
        return along.size() >= FEWEST_POINTS
                && along.stream().filter(SweepPoint::deliversPower).count() >= FEWEST_DELIVERING;
    }

    void checkSpread(List<SweepPoint> along) {
        if (along.size() < FEWEST_POINTS) {
            throw refused(
                    SweepFault.TOO_FEW_POINTS,
                    String.valueOf(along.size()),
                    "[5, ∞)",
                    new Suspects(taken).repeated(),
                    "a sweep needs a number of points of distinct load in {limit}, not {value}; add loads in between");
        }
        checkDelivering(along);
        checkSpread(along, SweepPoint::voltageV, "voltage");
        checkSpread(along, SweepPoint::currentA, "current");
    }

    private static void checkSpread(List<SweepPoint> along, ToDoubleFunction<SweepPoint> size, String name) {
        var sizes = along.stream().mapToDouble(size).summaryStatistics();
        var spread = (sizes.getMax() - sizes.getMin()) / sizes.getMax();
        if (!(spread >= LEAST_SPREAD)) {
            throw refused(
                    SweepFault.NO_SPREAD,
                    shown(spread),
                    "[0.1, ∞)",
                    null,
                    "the " + name + " of a sweep must spread over a part of its largest in {limit}, not {value};"
                            + " use loads further apart");
        }
    }

    void checkAxes(double currentA, double voltageV) {
        if (!(currentA > 0 && voltageV > 0)) {
            throw rising(
                    shown(1e6 * currentA) + " µA; " + shown(1e3 * voltageV) + " mV",
                    "(0, ∞)",
                    "a sweep must meet the axes in {limit}, not at {value}");
        }
    }

    void checkFillFactor(double fillFactor) {
        if (!(fillFactor > 0 && fillFactor < 1)) {
            throw rising(shown(fillFactor), "(0, 1)", "a sweep's fill factor must lie in {limit}, not {value}");
        }
    }

    private SweepRefused rising(String value, String limit, String message) {
        return refused(
                SweepFault.NOT_FALLING,
                value,
                limit,
                new Suspects(taken).rising(),
                message + "; the current must fall as the voltage rises");
    }

    private static SweepRefused refused(
            SweepFault fault, String value, String limit, @Nullable Integer suspect, String message) {
        return new SweepRefused(
                fault, value, limit, suspect, message.replace("{value}", value).replace("{limit}", limit));
    }

    private static String shown(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(value).round(SHOWN).stripTrailingZeros().toPlainString()
                : String.valueOf(value);
    }
}
