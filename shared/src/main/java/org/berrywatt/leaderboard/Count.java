package org.berrywatt.leaderboard;

/** How a team's cells make the team's figure. Failed cells count as 0. */
public enum Count {
    /** Median of the declared cells: one lucky or unlucky cell does not decide. The default. */
    MEDIAN("medianOfDeclared"),
    /** The best of the cells that somebody else has read again and found alike. */
    BEST_VERIFIED("bestVerified"),
    /** Arithmetic mean of the declared cells. */
    MEAN("meanOfDeclared");

    private final String key;

    Count(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
