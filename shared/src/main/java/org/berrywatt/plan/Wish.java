package org.berrywatt.plan;

/**
 * What a class wants to be able to see, and how much chance blurs.
 *
 * @param ratio how many times better one level should be than another to be found, in (1, infinity)
 * @param spread geometric standard deviation of cells that one team makes alike, in (1, infinity)
 */
public record Wish(double ratio, double spread) {

    /**
     * Cells that a team makes alike differ by this factor up or down: a standard deviation of the logarithm of 0.5, assumed
     * (common practice, no source) until earlier days tell.
     */
    public static final double USUAL_SPREAD = Math.exp(0.5);

    double noncentrality(double perSquaredLogarithm) {
        double effect = Math.log(ratio) / Math.log(spread);
        return perSquaredLogarithm * effect * effect;
    }

    /** The ratio whose noncentrality this is; infinite when the plan tells nothing. */
    double ratioOf(double noncentrality, double perSquaredLogarithm) {
        return Math.exp(Math.log(spread) * Math.sqrt(noncentrality / perSquaredLogarithm));
    }
}
