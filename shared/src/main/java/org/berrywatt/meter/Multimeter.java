package org.berrywatt.meter;

import java.util.List;
import org.berrywatt.uncertainty.Estimate;

/**
 * A multimeter as far as a cell notices it.
 *
 * @param voltage accuracy of the direct-voltage ranges
 * @param inputResistanceOhm of the voltage ranges, in (0, ∞)
 * @param current accuracy of the direct-current ranges
 * @param currentRanges smallest first, not empty
 */
public record Multimeter(
        AccuracyStatement voltage,
        double inputResistanceOhm,
        AccuracyStatement current,
        List<CurrentRange> currentRanges) {

    private static final int COUNTS = 2000;
    private static final double SHUNT_V = 0.2;
    private static final double FUSE_OHM = 2;

    /**
     * A cheap meter of 2000 counts: ±(0.5 % + 2 digits) in voltage over 10 MΩ, ±(1 % + 2 digits) in current with 0.2 V over
     * the shunt at full scale and a fuse of 2 Ω (common practice, no source).
     */
    public static Multimeter classroom() {
        return new Multimeter(
                new AccuracyStatement(0.5, 2),
                10e6,
                new AccuracyStatement(1, 2),
                List.of(range(200e-6), range(2e-3), range(20e-3), range(200e-3)));
    }

    /** A voltage reading with its standard uncertainty, in volts. */
    public Estimate voltageV(double readingV, double resolutionV) {
        return voltage.estimate(readingV, resolutionV);
    }

    /** A current reading with its standard uncertainty, in amperes. */
    public Estimate currentA(double readingA, double resolutionA) {
        return current.estimate(readingA, resolutionA);
    }

    /**
     * The range that shows such a reading: the smallest that holds it and has no finer last digit. The largest when none
     * does.
     */
    public CurrentRange rangeOf(double readingA, double resolutionA) {
        return currentRanges.stream()
                .filter(range -> range.shows(readingA, resolutionA))
                .findFirst()
                .orElseGet(() -> currentRanges.get(currentRanges.size() - 1));
    }

    private static CurrentRange range(double fullScaleA) {
        return CurrentRange.of(fullScaleA, COUNTS, SHUNT_V, FUSE_OHM);
    }
}
