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

    /**
     * Effective degrees of freedom of the combined standard uncertainty by the formula of Welch and Satterthwaite, u⁴ / Σ (uᵢ⁴
     * / νᵢ), for independent inputs (JCGM 100:2008, G.4.1).
     *
     * @return in (0, ∞]; ∞ when every input's uncertainty is taken as known
     */
    public double effectiveDegreesOfFreedom() {
        double sum = contributions.stream()
                .mapToDouble(part -> Math.pow(part.standardUncertainty() / standardUncertainty, 4)
                        / part.input().degreesOfFreedom())
                .sum();
        return sum > 0 ? 1 / sum : Double.POSITIVE_INFINITY;
    }

    /**
     * The half-width of the interval that holds the result with a probability: the combined standard uncertainty times
     * Student's factor for the effective degrees of freedom, rounded down to a whole number (JCGM 100:2008, G.4.1).
     *
     * @param probability in (0, 1)
     */
    public double expandedUncertainty(double probability) {
        double whole = Math.max(1, Math.floor(effectiveDegreesOfFreedom()));
        return standardUncertainty * Student.factor(probability, whole);
    }

    double[] signedParts() {
        return contributions.stream().mapToDouble(Contribution::signed).toArray();
    }
}
