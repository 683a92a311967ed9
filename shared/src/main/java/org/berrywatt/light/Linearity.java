package org.berrywatt.light;

import java.util.List;
import org.berrywatt.uncertainty.Estimate;

/**
 * Whether a cell's current grows as its light does: the slope of ln I against ln G (IEC 60904-10). A slope of 1 is a linear
 * cell; scaling its current with light is then right. Dyed cells often lie below 1 in bright light (Takagi et al. 2012), since
 * the electrolyte does not follow.
 *
 * @param slope with its standard uncertainty
 * @param span brightest light over dimmest, in (1, ∞)
 */
public record Linearity(Estimate slope, double span, Verdict verdict) {
    /** Up to this far from 1 a slope does as 1: 2 % per factor e of light, as the standard allows over its range (from memory). */
    private static final double NEGLIGIBLE = 0.02;
    /** A slope whose 95 % interval reaches further than this to either side tells nothing (common practice, no source). */
    private static final double SHARPEST = 0.1;

    private static final double LEAST_UNCERTAINTY = 1e-6;

    /** What the slope says. */
    public enum Verdict {
        /** The slope is 1 within its uncertainty. */
        HELD("held"),
        /** The slope is not 1. */
        BENT("bent"),
        /** The slope is too uncertain to tell. */
        OPEN("open");

        private final String key;

        Verdict(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /**
     * The check.
     *
     * @param readings of one cell, at two or more different lights; uncertainties only of what differs between them
     * @throws IllegalArgumentException when the lights are fewer
     */
    public static Linearity of(List<LitCurrent> readings) {
        var lights = readings.stream().mapToDouble(reading -> reading.lightWm2().value());
        var span = lights.summaryStatistics();
        if (!(span.getMax() > span.getMin())) {
            throw new IllegalArgumentException("linearity needs one cell read at two different lights or more");
        }
        var line = line(readings);
        var slope = new Estimate(line.slope(), line.slopeUncertainty());
        return new Linearity(slope, span.getMax() / span.getMin(), verdict(slope));
    }

    /**
     * By how much scaling in proportion misses, as a factor: what the cell gives at ratio times the light over ratio times
     * its current.
     */
    public double missedAt(double ratio) {
        return Math.pow(ratio, slope.value() - 1);
    }

    private static WeightedLine line(List<LitCurrent> readings) {
        return WeightedLine.through(
                readings.stream()
                        .mapToDouble(it -> Math.log(it.lightWm2().value()))
                        .toArray(),
                readings.stream()
                        .mapToDouble(it -> Math.log(it.currentA().value()))
                        .toArray(),
                readings.stream()
                        .mapToDouble(it -> Math.max(LEAST_UNCERTAINTY, it.relativeUncertainty()))
                        .toArray());
    }

    private static Verdict verdict(Estimate slope) {
        var off = Math.abs(slope.value() - 1);
        var reach = Estimate.COVERAGE_95 * slope.standardUncertainty();
        if (off > Math.max(NEGLIGIBLE, reach)) {
            return Verdict.BENT;
        }
        return reach <= SHARPEST ? Verdict.HELD : Verdict.OPEN;
    }
}
