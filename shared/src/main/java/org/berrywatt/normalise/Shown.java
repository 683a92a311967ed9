package org.berrywatt.normalise;

import org.berrywatt.meter.AccuracyStatement;
import org.berrywatt.quantity.Amount;

/**
 * What a meter showed, in SI units.
 *
 * @param value finite
 * @param accuracyHalfWidth half-width of the meter's accuracy statement at this value, in [0, ∞)
 * @param resolution step of the last digit shown, in [0, ∞)
 */
public record Shown(double value, double accuracyHalfWidth, double resolution) {
    /** A reading as typed, under a meter's accuracy statement. */
    public static Shown by(AccuracyStatement accuracy, Amount amount) {
        return new Shown(
                amount.valueSi(), accuracy.halfWidth(amount.valueSi(), amount.resolutionSi()), amount.resolutionSi());
    }

    /**
     * Checks the numbers.
     *
     * @throws NormalisationRefused when the value is not finite or a width is not in [0, ∞)
     */
    public Shown {
        Limits.require(Double.isFinite(value), "reading", value, "(-∞, ∞)");
        Limits.require(
                accuracyHalfWidth >= 0 && accuracyHalfWidth < Double.POSITIVE_INFINITY,
                "accuracy",
                accuracyHalfWidth,
                "[0, ∞)");
        Limits.require(resolution >= 0 && resolution < Double.POSITIVE_INFINITY, "resolution", resolution, "[0, ∞)");
    }

    /** Whether the display cannot tell it from 0: not 0 then, but less than it could have shown. */
    boolean isBelowResolution() {
        return Math.abs(value) < resolution;
    }

    /** The least that the display would not have taken for 0. */
    double censoredBelow() {
        return accuracyHalfWidth + resolution / 2;
    }

    /** The value, or where it is below the resolution the middle of what it may be. */
    double likeliest() {
        return isBelowResolution() ? censoredBelow() / 2 : value;
    }
}
