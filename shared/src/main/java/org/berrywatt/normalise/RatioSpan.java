package org.berrywatt.normalise;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * The ratios of reference light to light at the cell that trials meet, by their logarithm.
 *
 * @param middle logarithm of the likeliest ratio
 * @param halfWidth of the logarithm, in [0, ∞)
 */
record RatioSpan(double middle, double halfWidth) {
    /** Trials beyond so many standard uncertainties are one in 16,000; they follow the last piece of a table. */
    private static final double STANDARD_UNCERTAINTIES = 4;

    static RatioSpan around(double ratio, double relativeUncertainty) {
        return new RatioSpan(Math.log(ratio), STANDARD_UNCERTAINTIES * relativeUncertainty);
    }

    /** A function of the ratio as a table of so many points, an odd number so that one lies in the middle. */
    Table tabulate(int points, DoubleUnaryOperator ofRatio) {
        if (halfWidth == 0) {
            return Table.constant(ofRatio.applyAsDouble(Math.exp(middle)));
        }
        var step = 2 * halfWidth / (points - 1);
        return new Table(
                middle - halfWidth,
                step,
                IntStream.range(0, points)
                        .mapToDouble(i -> ofRatio.applyAsDouble(Math.exp(middle + (i - points / 2) * step)))
                        .toArray());
    }
}
