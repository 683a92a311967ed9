package org.berrywatt.uncertainty;

import java.util.List;

/**
 * A result with the table that explains its uncertainty (JCGM 100:2008, 7.2.3 and annex H).
 *
 * @param value the result
 * @param standardUncertainty combined standard uncertainty, in [0, ∞)
 * @param contributions one for each input, in the order of the inputs
 */
public record Budget(double value, double standardUncertainty, List<Contribution> contributions) {

    /** Value and combined standard uncertainty alone. */
    public Estimate estimate() {
        return new Estimate(value, standardUncertainty);
    }
}
