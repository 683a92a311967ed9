package org.berrywatt.leaderboard;

/** How a team's cells make the team's figure. Failed cells count as 0 under every rule. */
public enum Rule {
    /** Median of the declared cells: one lucky or unlucky cell does not decide. The default. */
    MEDIAN_OF_DECLARED("medianOfDeclared"),
    /** The best cell alone. */
    BEST_CELL("bestCell"),
    /** Arithmetic mean of the declared cells. */
    MEAN_OF_DECLARED("meanOfDeclared");

    private final String key;

    Rule(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
