package org.berrywatt.plan;

import java.util.List;

/**
 * Something with which a factor's effect is mixed up.
 *
 * @param with keys of the factors; none is the teams, one is another factor, two are how two others act together
 * @param correlation largest correlation between a difference of the factor and one of the other, in [0, 1]; 1 cannot be
 *     told apart at all
 */
public record Alias(List<String> with, double correlation) {

    /** From here on nothing of the two can be told apart; rounding leaves no more digits. */
    private static final double WHOLE = 1 - 1e-6;

    public boolean whole() {
        return correlation > WHOLE;
    }
}
