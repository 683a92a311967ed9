package org.berrywatt.server.findings;

/**
 * Something that several cells have in common: a team, a day, a station.
 *
 * @param name what people call it
 */
record Group(String key, String name) {

    /** Nothing in common. */
    static final Group NONE = new Group("", "");
}
