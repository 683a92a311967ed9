package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;

/** A local date and time as it stands in the files. */
final class When {

    private static final DateTimeFormatter TO_THE_SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");

    private When() {}

    static String of(LocalDateTime at) {
        return at.format(TO_THE_SECOND);
    }
}
