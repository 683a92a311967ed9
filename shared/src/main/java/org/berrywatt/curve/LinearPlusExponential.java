package org.berrywatt.curve;

/**
 * The equation that every question to a single diode comes down to: {@code slope x + weight (exp(x/scale) - 1) = sum}.
 *
 * <p>The left side rises and curves upwards, so Newton's rule started right of the root walks down to it without
 * overshooting. Either term alone gives a bound right of the root; the nearer one is at most a few steps away, and
 * keeps the exponential within the range of a double.
 *
 * @param slope in [0, infinity), with slope + weight above 0
 * @param weight in [0, infinity)
 * @param scale in (0, infinity)
 */
record LinearPlusExponential(double slope, double weight, double scale) {
    private static final int ENOUGH_STEPS = 200;

    /** The root x for a sum, which must lie above {@code -weight} where slope is 0. */
    double root(double sum) {
        var x = rightOfRoot(sum);
        for (int step = 0; step < ENOUGH_STEPS; step++) {
            var next = x - excess(x, sum) / steepness(x);
            if (!(next < x)) {
                return x;
            }
            x = next;
        }
        return x;
    }

    private double excess(double x, double sum) {
        return slope * x + weight * Math.expm1(x / scale) - sum;
    }

    private double steepness(double x) {
        return slope + weight / scale * Math.exp(x / scale);
    }

    private double rightOfRoot(double sum) {
        return sum > 0 ? Math.min(sum / slope, scale * logOnePlusRatio(sum)) : Math.min(0, (sum + weight) / slope);
    }

    /** ln(1 + sum/weight), also where the quotient is beyond a double. */
    private double logOnePlusRatio(double sum) {
        var ratio = sum / weight;
        return ratio < Double.MAX_VALUE ? Math.log1p(ratio) : Math.log(sum) - Math.log(weight);
    }
}
