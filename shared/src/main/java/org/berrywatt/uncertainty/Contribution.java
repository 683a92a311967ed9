package org.berrywatt.uncertainty;

/**
 * The part of one input in the uncertainty of a result.
 *
 * @param sensitivity change of the result per unit of the input
 * @param share part of the result's variance; the shares add up to 1. In [0, 1] for an input on its own; one that is correlated
 *     with others may have a negative share, where it takes away from theirs. 0 when the result has no uncertainty
 */
public record Contribution(Input input, double sensitivity, double share) {

    /** What the input adds to the result's standard uncertainty, in the unit of the result, in [0, ∞). */
    public double standardUncertainty() {
        return Math.abs(signed());
    }

    /** Change of the result for one standard uncertainty of the input. */
    double signed() {
        return sensitivity * input.standardUncertainty();
    }
}
