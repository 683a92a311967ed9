package org.berrywatt.uncertainty;

/**
 * The part of one input in the uncertainty of a result.
 *
 * @param sensitivity change of the result per unit of the input
 * @param share part of the result's variance, in [0, 1]; 0 when the result has no uncertainty
 */
public record Contribution(Input input, double sensitivity, double share) {

    /** What the input adds to the result's standard uncertainty, in the unit of the result, in [0, ∞). */
    public double standardUncertainty() {
        return Math.abs(sensitivity) * input.standardUncertainty();
    }
}
