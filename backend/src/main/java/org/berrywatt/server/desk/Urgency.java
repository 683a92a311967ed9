package org.berrywatt.server.desk;

/** How soon something needs the teacher; the reasons for this order are in docs/decisions. */
enum Urgency {
    /** Somebody may be hurt. */
    HURT,
    /** Something is spoilt by the minute. */
    SPOILS,
    /** A number cannot be trusted. */
    DOUBT,
    /** A team waits or has gone quiet. */
    WAITS;

    int number() {
        return ordinal() + 1;
    }
}
