package org.berrywatt.server.desk;

/** What may wait for the teacher, each with how soon and with the one next step. */
enum Kind {
    /** Teams at a step with a hazard for which nobody signed them off. */
    UNSIGNED("unsigned", Urgency.HURT, "signOff"),
    /** An accident or a near miss that was written down and that nobody has looked at. */
    INCIDENT("incident", Urgency.HURT, "openIncidents"),
    /** Two cells are said to lie on one place of a heater: one is hot elsewhere. */
    HEATER_TWICE("heaterTwice", Urgency.HURT, "openHeater"),
    /** A cell whose time on the heater is over. */
    TAKE_OUT("takeOut", Urgency.SPOILS, "openHeater"),
    /** A phone holds entries that the server refused. */
    REFUSED("refused", Urgency.SPOILS, "openTeams"),
    /** A station's light was read too long ago, or never, while cells are read there. */
    STATION_STALE("stationStale", Urgency.SPOILS, "openStation"),
    STATION_DARK("stationDark", Urgency.SPOILS, "openStation"),
    /** The day ranks by the ratio to a control cell, and none is chosen. */
    NO_CONTROL("noControl", Urgency.SPOILS, "openControl"),
    /** A number outside common practice that its writer confirmed. */
    UNUSUAL("unusual", Urgency.DOUBT, "openCell"),
    /** Two readings at one station soon after each other that differ. */
    APART("apart", Urgency.DOUBT, "openCell"),
    /** Somebody else read the cell and found something else. */
    READ_DIFFERENTLY("readDifferently", Urgency.DOUBT, "openCell"),
    /** Readings that make no solar cell: swapped leads, no answer to light, no curve. */
    CONTRADICTION("contradiction", Urgency.DOUBT, "openCell"),
    BATTERY("battery", Urgency.DOUBT, "openCell"),
    NO_DARK_CHECK("noDarkCheck", Urgency.DOUBT, "openCell"),
    /** A cell that counts once somebody else has read it. */
    READ_AGAIN("readAgain", Urgency.WAITS, "openCell"),
    SILENT("silent", Urgency.WAITS, "openTeam"),
    /** Nobody has entered anything for long. */
    QUIET("quiet", Urgency.WAITS, "closeEntry"),
    /** The day was to be kept until a date that is near, or over. */
    KEEP_ENDS("keepEnds", Urgency.WAITS, "openData"),
    KEEP_OVER("keepOver", Urgency.WAITS, "openData");

    private final String key;
    private final Urgency urgency;
    private final String action;

    Kind(String key, Urgency urgency, String action) {
        this.key = key;
        this.urgency = urgency;
        this.action = action;
    }

    String key() {
        return key;
    }

    Urgency urgency() {
        return urgency;
    }

    String action() {
        return action;
    }
}
