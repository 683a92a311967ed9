package org.berrywatt.uncertainty;

import org.hipparchus.stat.StatUtils;

/**
 * Mean and experimental standard deviation (n - 1) of numbers, in two passes so that few digits are lost.
 *
 * @param standardDeviation in [0, ∞); NaN for a single number
 */
record Moments(double mean, double standardDeviation) {

    static Moments of(double[] values) {
        double mean = StatUtils.mean(values);
        double variance = values.length > 1 ? StatUtils.variance(values, mean) : Double.NaN;
        return new Moments(mean, Math.sqrt(variance));
    }
}
