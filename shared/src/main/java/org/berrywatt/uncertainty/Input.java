package org.berrywatt.uncertainty;

import org.jspecify.annotations.Nullable;

/**
 * An input quantity of a measurement model.
 *
 * @param name text key or symbol
 * @param value the estimate, finite
 * @param unit unit of value and standard uncertainty
 * @param standardUncertainty in [0, ∞)
 * @param shape distribution
 * @param degreesOfFreedom how well the standard uncertainty itself is known, in (0, ∞]; ∞ when it is taken as known
 * @param cause names what moves this input in every result alike, such as one reading of a station; null when the input is
 *     the result's own
 */
public record Input(
        String name,
        double value,
        String unit,
        double standardUncertainty,
        Shape shape,
        double degreesOfFreedom,
        @Nullable String cause) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException when the value is not finite, the uncertainty not in [0, ∞) or the degrees of freedom
     *     not in (0, ∞]
     */
    public Input {
        if (!Double.isFinite(value) || !(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("input " + name + " must be finite with a standard uncertainty in"
                    + " [0, infinity), not " + value + " with " + standardUncertainty);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "input " + name + " must have degrees of freedom in (0, infinity], not " + degreesOfFreedom);
        }
    }

    /** A normal input by its standard uncertainty. */
    public static Input normal(String name, double value, String unit, double standardUncertainty) {
        return of(name, value, unit, standardUncertainty, Shape.NORMAL);
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

    /** An input that swings between value ± half-width. */
    public static Input arcsine(String name, double value, String unit, double halfWidth) {
        return within(name, value, unit, halfWidth, Shape.ARCSINE);
    }

    /** An input estimated from few readings: the mean with s / √n. */
    public static Input student(
            String name, double value, String unit, double standardUncertainty, double degreesOfFreedom) {
        return new Input(name, value, unit, standardUncertainty, Shape.STUDENT, degreesOfFreedom, null);
    }

    /** This input, moved by a cause that it shares with others; all inputs of one cause have one shape. */
    public Input sharedBy(String cause) {
        return new Input(name, value, unit, standardUncertainty, shape, degreesOfFreedom, cause);
    }

    /** This input, its standard uncertainty itself known with so many degrees of freedom. */
    public Input withDegreesOfFreedom(double degreesOfFreedom) {
        return new Input(name, value, unit, standardUncertainty, shape, degreesOfFreedom, cause);
    }

    private static Input within(String name, double value, String unit, double halfWidth, Shape shape) {
        return of(name, value, unit, shape.standardUncertainty(halfWidth), shape);
    }

    private static Input of(String name, double value, String unit, double standardUncertainty, Shape shape) {
        return new Input(name, value, unit, standardUncertainty, shape, Double.POSITIVE_INFINITY, null);
    }
}
