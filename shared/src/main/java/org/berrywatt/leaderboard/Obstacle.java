package org.berrywatt.leaderboard;

/** Why a rule does not take a cell's result; its key names the sentence with the remedy. */
public enum Obstacle {
    /** Nobody else has read it: let another person read it once more. */
    NOT_READ_AGAIN("notReadAgain"),
    /** Somebody else read something different: find out why and read once more. */
    READ_DIFFERENTLY("readDifferently"),
    /** Measured at another station than most cells: read it there as well. */
    OTHER_STATION("otherStation");

    private final String key;

    Obstacle(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
