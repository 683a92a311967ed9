package org.berrywatt.leaderboard;

/** Why a rule does not take a cell's result; its key names the sentence with the remedy. */
public enum Obstacle {
    /** Nobody else has read it: let another person read it once more. */
    NOT_READ_AGAIN("notReadAgain"),
    /** Somebody else read something different: find out why and read once more. */
    READ_DIFFERENTLY("readDifferently"),
    /** Measured at another station than most cells: read it there as well. */
    OTHER_STATION("otherStation"),
    /** The day has no control cell: the teacher chooses one. */
    NO_CONTROL("noControl"),
    /** The control cell was not read at this station near in time, or has no result there: read it there, then the cell. */
    CONTROL_NOT_READ("controlNotRead"),
    /** The control cell's power cannot be told from 0: choose a stronger one. */
    CONTROL_TOO_FAINT("controlTooFaint"),
    /** Too few readings to tell that it had settled: read it three times over ten minutes or more. */
    NOT_SETTLED("notSettled"),
    /** Not read again an hour or more after it had settled: read it later, or next lesson. */
    NO_LATER_READING("noLaterReading"),
    /** When it had settled, its current could not be told from 0: there is nothing to compare with. */
    SETTLED_TOO_FAINT("settledTooFaint");

    private final String key;

    Obstacle(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
