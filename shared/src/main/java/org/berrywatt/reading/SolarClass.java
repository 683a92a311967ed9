package org.berrywatt.reading;

/** What a dark check and a reading under light make of a cell. */
public enum SolarClass {
    /** Answers to light; what it gives in the dark is small. */
    PHOTOVOLTAIC("photovoltaic", true),
    /** Answers to light beside a part that is there in the dark as well. */
    MIXED("mixed", true),
    /** A battery first of all: the dark part dominates, light lowers the voltage, or the voltage is beyond a dye cell's. */
    GALVANIC("galvanic", false),
    /** A solar cell but for its sign: the leads are swapped. */
    REVERSED("reversed", false),
    /** Light changes nothing that the meter can tell. */
    NO_RESPONSE("noResponse", false),
    /** Answers to ultraviolet or sun, but not to light without: the bare oxide, not the dye. */
    OXIDE_ONLY("oxideOnly", false);

    private final String key;
    private final boolean counts;

    SolarClass(String key, boolean counts) {
        this.key = key;
        this.counts = counts;
    }

    public String key() {
        return key;
    }

    /** Whether such a cell is ranked. */
    public boolean counts() {
        return counts;
    }
}
