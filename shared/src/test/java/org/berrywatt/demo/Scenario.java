package org.berrywatt.demo;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.UUID;

/** The frame of the demo day. */
final class Scenario {

    static final long SEED = 77136;
    static final String TITLE = "Hedgerow cells, Ostrel Valley";
    static final LocalDateTime START = LocalDateTime.of(2026, 9, 24, 11, 30);
    static final LocalDateTime BELL = START.withHour(16).withMinute(20);

    private Scenario() {}

    /** An id that follows from the seed and a name, the same in every run. */
    static String id(String name) {
        return uuid(name).toString();
    }

    /** Bits that follow from the seed and a name. */
    static UUID uuid(String name) {
        return UUID.nameUUIDFromBytes(("hedgerow " + SEED + " " + name).getBytes(StandardCharsets.UTF_8));
    }

    static LocalDateTime at(int hour, int minute) {
        return START.withHour(hour).withMinute(minute);
    }
}
