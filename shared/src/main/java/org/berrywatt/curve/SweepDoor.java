package org.berrywatt.curve;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.berrywatt.uncertainty.Estimate;

/** What a sweep must be to have figures. */
final class SweepDoor {
    private static final int FEWEST_POINTS = 5;
    private static final int FEWEST_DELIVERING = 3;
    private static final double LEAST_SPREAD = 0.1;

    private static final double COLDEST_C = -100;
    private static final double HOTTEST_C = 200;

    private SweepDoor() {}

    static void checkTemperature(double temperatureC) {
        if (!(temperatureC >= COLDEST_C && temperatureC <= HOTTEST_C)) {
            throw new IllegalArgumentException("a cell's temperature must lie in [-100, 200] °C, not " + temperatureC
                    + " °C; a warm room has 20 to 25 °C");
        }
    }

    static void checkPoints(List<SweepPoint> points) {
        points.forEach(SweepDoor::checkFinite);
        var delivering =
                points.stream().filter(SweepPoint::deliversPower).distinct().count();
        require(
                delivering >= FEWEST_DELIVERING,
                SweepFault.WRONG_QUADRANT,
                "a sweep needs a number of points with voltage and current above 0 in [3, ∞), not " + delivering
                        + "; swap the leads if they are all negative");
    }

    private static void checkFinite(SweepPoint point) {
        require(
                Double.isFinite(point.voltageV()) && Double.isFinite(point.currentA()),
                SweepFault.NOT_FINITE,
                "a sweep's points must be finite, not " + point.voltageV() + " V and " + point.currentA() + " A");
    }

    /** Whether points of distinct load are enough of them, and enough deliver power, to have a peak. */
    static boolean hasEnough(List<SweepPoint> along) {
        return along.size() >= FEWEST_POINTS
                && along.stream().filter(SweepPoint::deliversPower).count() >= FEWEST_DELIVERING;
    }

    static void checkSpread(List<SweepPoint> along) {
        require(
                along.size() >= FEWEST_POINTS,
                SweepFault.TOO_FEW_POINTS,
                "a sweep needs a number of points of distinct load in [5, ∞), not " + along.size());
        checkSpread(along, SweepPoint::voltageV, "voltage");
        checkSpread(along, SweepPoint::currentA, "current");
    }

    private static void checkSpread(List<SweepPoint> along, ToDoubleFunction<SweepPoint> size, String name) {
        var sizes = along.stream().mapToDouble(size).summaryStatistics();
        var spread = (sizes.getMax() - sizes.getMin()) / sizes.getMax();
        require(
                spread >= LEAST_SPREAD,
                SweepFault.NO_SPREAD,
                "the " + name + " of a sweep must spread over a part of its largest in [0.1, ∞), not " + spread
                        + "; use loads further apart");
    }

    static void checkAxes(Estimate currentA, Estimate voltageV) {
        require(
                currentA.value() > 0 && voltageV.value() > 0,
                SweepFault.NOT_FALLING,
                "a sweep must meet the axes in (0, ∞), not at " + currentA.value() + " A and " + voltageV.value()
                        + " V; the current must fall as the voltage rises");
    }

    static void checkFillFactor(SweepFigures figures) {
        var fillFactor = figures.fillFactor().value();
        require(
                fillFactor > 0 && fillFactor < 1,
                SweepFault.NOT_FALLING,
                "a sweep's fill factor must lie in (0, 1), not " + fillFactor
                        + "; the current must fall as the voltage rises");
    }

    private static void require(boolean holds, SweepFault fault, String message) {
        if (!holds) {
            throw new SweepRefused(fault, message);
        }
    }
}
