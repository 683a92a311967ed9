package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.List;

/**
 * A reading as it was written down.
 *
 * @param kind dark, light, sweep or toggles
 * @param stationId empty in the dark
 * @param voltage as typed, empty for a sweep and for toggles
 * @param current as typed, empty for a sweep and for toggles
 * @param unusualConfirmed whether a person ticked that the meter really showed this
 * @param replaces the reading that this one corrects, or empty
 * @param points rows of a sweep, or of the cell covered and open in turn
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

    /** A row of a load sweep, the voltage across a resistor; or of toggles, a current alone. */
    record Point(String load, String voltage, String current) {}

    Recorded at(LocalDateTime moment) {
        return new Recorded(id, cellId, kind, stationId, voltage, current, unusualConfirmed, replaces, points, moment);
    }
}
