package org.berrywatt.leaderboard;

/**
 * What a day agreed on.
 *
 * @param cellsPerTeam number of cells each team declares, in [1, ∞); a team that registered more is measured by all of them
 * @param entryOpen whether readings may still come in
 * @param trials number of trials of every result, in [40, ∞)
 */
public record Terms(Rule rule, int cellsPerTeam, boolean entryOpen, int trials) {
    /** With fewer, no trial lies outside a 95 % interval on either side. */
    private static final int FEWEST_TRIALS = 40;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException when there are too few cells or trials
     */
    public Terms {
        if (cellsPerTeam < 1) {
            throw new IllegalArgumentException("cells per team must lie in [1, ∞), not " + cellsPerTeam);
        }
        if (trials < FEWEST_TRIALS) {
            throw new IllegalArgumentException("trials must lie in [" + FEWEST_TRIALS + ", ∞), not " + trials);
        }
    }
}
