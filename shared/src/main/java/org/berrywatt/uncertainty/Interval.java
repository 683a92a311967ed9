package org.berrywatt.uncertainty;

/**
 * A closed interval, both ends in one unit.
 *
 * @param low finite
 * @param high finite, in [low, ∞)
 */
public record Interval(double low, double high) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException when an end is not finite or the high end below the low one
     */
    public Interval {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
            throw new IllegalArgumentException(
                    "an interval needs finite ends in order, not [" + low + ", " + high + "]");
        }
    }

    /** The distance of the ends, in [0, ∞). */
    public double width() {
        return high - low;
    }

    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** The interval of a quantity times an exact factor; a negative one swaps the ends. */
    public Interval times(double factor) {
        return new Interval(Math.min(low * factor, high * factor), Math.max(low * factor, high * factor));
    }
}
