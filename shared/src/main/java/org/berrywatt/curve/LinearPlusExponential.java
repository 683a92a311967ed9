package org.berrywatt.curve;

/**
 * The equation that every question to a single diode comes down to: {@code slope x + weight (exp(x/scale) - 1) = sum}.
 *
 * <p>With E = weight exp(x/scale) / (slope scale) it reads E + ln E = u, whose solution {@link WrightOmega} knows to seven
 * digits or more. A step of Newton's rule on the equation itself, which rises and curves upwards, doubles them. Where a
 * term is missing or leaves the range of a double, Newton's rule starts right of the root instead and walks down to it
 * without overshooting.
 *
 * @param slope in [0, infinity), with slope + weight above 0
 * @param weight in [0, infinity)
 * @param scale in (0, infinity)
 */
record LinearPlusExponential(double slope, double weight, double scale) {
    private static final int ENOUGH_STEPS = 200;

    /** Newton's rule squares the error: a step this small, as a part of the scale, leaves less than a rounding. */
    private static final double LAST_STEP = 1e-8;

    /** The root x for a sum, which must lie above {@code -weight} where slope is 0. */
    double root(double sum) {
        if (sum == 0 || weight == 0) {
            return sum == 0 ? 0 : sum / slope;
        }
        var near = nearRoot(sum);
        var x = Math.abs(near) < Double.MAX_VALUE ? near : rightOfRoot(sum);
        for (int step = 0; step < ENOUGH_STEPS; step++) {
            var tooFar = tooFar(x, sum);
            x -= tooFar;
            if (!(Math.abs(tooFar) > LAST_STEP * scale)) {
                return x;
            }
        }
        return x;
    }

    /** Newton's step: the excess at x over the steepness there. */
    private double tooFar(double x, double sum) {
        var exponential = weight * Exponential.lessOne(x / scale);
        return (slope * x + exponential - sum) / (slope + (exponential + weight) / scale);
    }

    private double nearRoot(double sum) {
        var linear = slope * scale;
        var logRatio = Math.log(weight / linear);
        var alone = (sum + weight) / linear;
        var part = WrightOmega.near(alone + logRatio);
        return scale * (part > 1 ? Math.log(part) - logRatio : alone - part);
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
