package org.berrywatt.server.light;

import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Words;
import org.springframework.stereotype.Component;

/** The names of a day's stations: a team must know which one is meant. */
@Component
class StationNames {

    private final StationRecords records;

    StationNames(StationRecords records) {
        this.records = records;
    }

    /**
     * Lets a station be called what no other one of its day is called by now.
     *
     * @throws Refusal {@code name.taken}
     */
    void requireFree(String name, UUID stationId, UUID labDayId) {
        var key = Words.key(name);
        var taken = records.ofLabDay(labDayId).stream()
                .filter(other -> !other.station().id().equals(stationId))
                .anyMatch(other -> Words.key(other.setup().name()).equals(key));
        if (taken) {
            throw Refusal.of(ProblemCode.NAME_TAKEN).field("name").value(name);
        }
    }
}
