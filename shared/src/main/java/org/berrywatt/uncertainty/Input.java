package org.berrywatt.uncertainty;

/**
 * An input quantity of a measurement model.
 *
 * @param name text key or symbol
 * @param value the estimate, finite
 * @param unit unit of value and standard uncertainty
 * @param standardUncertainty in [0, ∞)
 * @param shape distribution
 */
public record Input(String name, double value, String unit, double standardUncertainty, Shape shape) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException when the value is not finite or the uncertainty not in [0, ∞)
     */
    public Input {
        if (!Double.isFinite(value) || !(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("input " + name + " must be finite with a standard uncertainty in"
                    + " [0, infinity), not " + value + " with " + standardUncertainty);
        }
    }

    /** A normal input by its standard uncertainty. */
    public static Input normal(String name, double value, String unit, double standardUncertainty) {
        return new Input(name, value, unit, standardUncertainty, Shape.NORMAL);
    }

    /** A normal input by its estimate. */
    public static Input normal(String name, Estimate estimate, String unit) {
        return normal(name, estimate.value(), unit, estimate.standardUncertainty());
    }

    /** An input known to lie within value ± half-width, all values alike. */
    public static Input rectangular(String name, double value, String unit, double halfWidth) {
        return within(name, value, unit, halfWidth, Shape.RECTANGULAR);
    }

    /** An input known to lie within value ± half-width, the middle likelier. */
    public static Input triangular(String name, double value, String unit, double halfWidth) {
        return within(name, value, unit, halfWidth, Shape.TRIANGULAR);
    }

    private static Input within(String name, double value, String unit, double halfWidth, Shape shape) {
        return new Input(name, value, unit, shape.standardUncertainty(halfWidth), shape);
    }
}
