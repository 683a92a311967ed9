package org.berrywatt.curve;

/**
 * The solution w of w + ln w = u for real u, the Wright omega function.
 *
 * <p>A start from the series at minus infinity, at u = 1 or at infinity, then one step of fourth order. Source: P. W.
 * Lawrence, R. M. Corless, D. J. Jeffrey, Algorithm 917, ACM Transactions on Mathematical Software 38 (2012) 20; the step is
 * of F. N. Fritsch, R. E. Shafer, W. P. Crowley, Communications of the ACM 16 (1973) 123-124 (both from memory).
 */
final class WrightOmega {
    private static final double FAR_BELOW = -2;
    private static final double FAR_ABOVE = Math.PI;

    private WrightOmega() {}

    /** Seven digits or more for u up to 1e100; 0 where w is below the range of a double, not finite where u is far above. */
    static double near(double u) {
        var start = start(u);
        return start > Double.MIN_NORMAL ? refined(start, u - start - Math.log(start)) : start;
    }

    private static double start(double u) {
        if (u < FAR_BELOW) {
            var power = Math.exp(u);
            return power * (1 - power * (1 - power * (1.5 - power * (8.0 / 3 - power * (125.0 / 24)))));
        }
        return u < FAR_ABOVE ? aroundOne(u - 1) : farAbove(u);
    }

    /** Taylor series around u = 1, where w = 1. */
    private static double aroundOne(double d) {
        return 1 + d * (1.0 / 2 + d * (1.0 / 16 + d * (-1.0 / 192 + d * (-1.0 / 3072 + d * (13.0 / 61440)))));
    }

    private static double farAbove(double u) {
        var log = Math.log(u);
        return u - log + log / u + log * (log - 2) / (2 * u * u);
    }

    /** One step for the remainder r = u - w - ln w. */
    private static double refined(double w, double r) {
        var onePlus = 1 + w;
        var curvature = 2 * onePlus * (onePlus + 2 * r / 3);
        return w * (1 + r / onePlus * (curvature - r) / (curvature - 2 * r));
    }
}
