package org.berrywatt.server.data;

import java.util.Map;
import java.util.Map.Entry;
import java.util.Optional;

/** A column of a table; the end of its name says its unit. */
record Column(String name, ColumnType type) {

    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("_v", "V"),
            Map.entry("_a", "A"),
            Map.entry("_ohm", "ohm"),
            Map.entry("_m", "m"),
            Map.entry("_deg", "deg"),
            Map.entry("_cm2", "cm2"),
            Map.entry("_lx", "lx"),
            Map.entry("_w_m2", "W/m2"),
            Map.entry("_a_m2", "A/m2"));

    /** Its unit, by the longest ending that is one. */
    Optional<String> unit() {
        return UNITS.entrySet().stream()
                .filter(unit -> name.endsWith(unit.getKey()))
                .max(Entry.comparingByKey((one, other) -> Integer.compare(one.length(), other.length())))
                .map(Entry::getValue);
    }
}
