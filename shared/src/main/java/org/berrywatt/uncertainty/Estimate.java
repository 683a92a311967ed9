package org.berrywatt.uncertainty;

/**
 * A value with its standard uncertainty, both in the same unit.
 *
 * @param value the estimate, finite
 * @param standardUncertainty one standard uncertainty, in [0, ∞)
 */
public record Estimate(double value, double standardUncertainty) {

    /** Coverage factor of 95 % for a normal distribution (JCGM 100:2008, table G.1). */
    public static final double COVERAGE_95 = 1.959963984540054;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException when the value is not finite or the uncertainty not in [0, ∞)
     */
    public Estimate {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("an estimate must be finite, not " + value);
        }
        if (!(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a standard uncertainty lies in [0, infinity), not " + standardUncertainty);
        }
    }

    /** A value without uncertainty. */
    public static Estimate exact(double value) {
        return new Estimate(value, 0);
    }

    /** Lower end of the 95 % interval. */
    public double low() {
        return value - COVERAGE_95 * standardUncertainty;
    }

    /** Upper end of the 95 % interval. */
    public double high() {
        return value + COVERAGE_95 * standardUncertainty;
    }

    /** Standard uncertainty as a part of the value's size; infinite or NaN at zero. */
    public double relativeUncertainty() {
        return standardUncertainty / Math.abs(value);
    }

    /** The estimate times an exact factor. */
    public Estimate times(double factor) {
        return new Estimate(value * factor, standardUncertainty * Math.abs(factor));
    }

    /** The difference to an independent estimate (JCGM 100:2008, 5.1.2). */
    public Estimate minus(Estimate other) {
        return new Estimate(value - other.value, Math.hypot(standardUncertainty, other.standardUncertainty));
    }
}
