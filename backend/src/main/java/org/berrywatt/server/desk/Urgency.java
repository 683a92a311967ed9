package org.berrywatt.server.desk;

/** How soon something needs the teacher; the reasons for this order are in docs/decisions. */
enum Urgency {
    /** Somebody may be hurt. */
    HURT(1),
    /** Something is spoilt by the minute. */
    SPOILS(2),
    /** A number cannot be trusted. */
    DOUBT(3),
    /** A team waits or has gone quiet. */
    WAITS(4);

    private final int number;

    Urgency(int number) {
        this.number = number;
    }

    int number() {
        return number;
    }
}
