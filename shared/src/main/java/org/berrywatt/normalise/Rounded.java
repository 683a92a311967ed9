package org.berrywatt.normalise;

import org.berrywatt.quantity.Amount;

/**
 * A number as it was printed: it stands for everything that rounds to it.
 *
 * @param value in (0, ∞)
 * @param step of the last printed digit, in [0, ∞); 0 for a number that is exact by convention
 */
public record Rounded(double value, double step) {
    /** A typed number in SI units, rounded to its last typed digit. */
    public static Rounded of(Amount amount) {
        return new Rounded(amount.valueSi(), amount.resolutionSi());
    }

    /**
     * Checks the number.
     *
     * @throws NormalisationRefused when the value is not in (0, ∞) or the step not in [0, ∞)
     */
    public Rounded {
        Limits.require(value > 0 && value < Double.POSITIVE_INFINITY, "printedValue", value, "(0, ∞)");
        Limits.require(step >= 0 && step < Double.POSITIVE_INFINITY, "printedStep", step, "[0, ∞)");
    }

    double low() {
        return Math.max(0, value - step / 2);
    }

    double high() {
        return value + step / 2;
    }
}
