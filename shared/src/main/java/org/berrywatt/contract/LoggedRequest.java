package org.berrywatt.contract;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A reading as a small device sends it. Every number has its unit behind it: {@code "412 mV"}.
 *
 * @param id chosen by the device, 1 to 64 characters, another one for each reading; the same again adds nothing
 * @param cell label of a cell of its team; null from a station
 * @param kind {@code "dark"}, {@code "light"} or {@code "sweep"}; null from a station
 * @param station name of the station under which a cell is read; null for a dark check and from a station
 * @param points rows of a sweep, 5 to 60
 * @param light what a station's instrument shows; null from a team
 * @param confirmed whether a number that is possible but unusual is to be taken
 */
public record LoggedRequest(
        String id,
        @Nullable String cell,
        @Nullable String kind,
        @Nullable String station,
        @Nullable String voltage,
        @Nullable String current,
        @Nullable List<Point> points,
        @Nullable String light,
        @Nullable Boolean confirmed) {

    /** One row of a sweep: any two of load, voltage and current, delivered current positive. */
    public record Point(
            @Nullable String load,
            @Nullable String voltage,
            @Nullable String current) {}
}
