package org.berrywatt.cell;

/** Ways in which a stage fails, each by what is seen at the bench. */
public enum FailureKind {
    PATCHY("patchy"),
    CRACKED_WHILE_DRYING("crackedWhileDrying"),
    WRONG_SIDE("wrongSide"),
    STAYED_BROWN("stayedBrown"),
    FLAKED("flaked"),
    GLASS_CRACKED("glassCracked"),
    GLASS_BENT("glassBent"),
    WASHED_OFF("washedOff"),
    STAYED_PALE("stayedPale"),
    COLOUR_TURNED("colourTurned"),
    CARBON_RUBBED_OFF("carbonRubbedOff"),
    LEAKED("leaked"),
    DRIED_OUT("driedOut"),
    ELECTRODES_TOUCH("electrodesTouch"),
    NO_READING("noReading"),
    CONTACT_LOST("contactLost"),
    GLASS_BROKE("glassBroke"),
    OTHER("other");

    private final String key;

    FailureKind(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
