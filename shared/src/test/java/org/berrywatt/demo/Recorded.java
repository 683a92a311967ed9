package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.List;

/**
 * A reading as it was written down.
 *
 * @param kind dark, light or sweep
 * @param stationId empty in the dark
 * @param voltage as typed, empty for a sweep
 * @param current as typed, empty for a sweep
 * @param unusualConfirmed whether a person ticked that the meter really showed this
 * @param replaces the reading that this one corrects, or empty
 * @param points rows of a sweep
 */
record Recorded(
        String id,
        String cellId,
        String kind,
        String stationId,
        String voltage,
        String current,
        boolean unusualConfirmed,
        String replaces,
        List<Point> points,
        LocalDateTime at) {

    /** A row of a load sweep: the voltage across a resistor. */
    record Point(String load, String voltage) {}

    Recorded at(LocalDateTime moment) {
        return new Recorded(id, cellId, kind, stationId, voltage, current, unusualConfirmed, replaces, points, moment);
    }
}
