package org.berrywatt.server;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/** A day of teams with three cells each and one lit station, whose readings differ from each other. */
final class SchoolDay {

    private static final int CELLS_PER_TEAM = 3;
    private final Rehearsal day;
    private final UUID station;
    private final List<UUID> teams = new ArrayList<>();
    private final List<UUID> cells = new ArrayList<>();
    private final AtomicInteger filled = new AtomicInteger();

    SchoolDay(Rehearsal day, int teamCount) {
        this.day = day;
        this.station = day.sunnyStation("Yard");
        day.light(station, "1000 W/m2");
        for (int team = 0; team < teamCount; team++) {
            UUID id = day.team("Voles " + team);
            teams.add(id);
            for (int cell = 0; cell < CELLS_PER_TEAM; cell++) {
                cells.add(day.cell(id, "V" + team + "-" + cell, "15 x 15 mm"));
            }
        }
        cells.forEach(cell -> day.dark(cell, "0 mV", "0 uA"));
    }

    UUID id() {
        return day.labDayId;
    }

    /** The team of a cell. */
    UUID team(int cell) {
        return teams.get(cell / CELLS_PER_TEAM);
    }

    /** Enters readings without the network. */
    void fill(int readings) {
        for (int each = 0; each < readings; each++) {
            int number = filled.getAndIncrement();
            day.lit(cells.get(number % cells.size()), station, 300 + number % 300 + " mV", "900 uA");
        }
    }

    /** Sends a reading over HTTP; the phone is that of the cell's team. */
    void send(Browser phone, int cell, int number) throws IOException, InterruptedException {
        var answer = phone.put(newReading(), reading(cell, number));
        if (answer.statusCode() != 200) {
            throw new IOException(answer.body());
        }
    }

    /** Where a reading is sent that nobody sent before. */
    static String newReading() {
        return "/api/readings/" + UUID.randomUUID();
    }

    /** A reading of a cell under the day's light, as a page sends it. */
    String reading(int cell, int number) {
        return """
                {"cellId": "%s", "kind": "light", "stationId": "%s", "voltage": {"text": "%d mV"},
                 "current": {"text": "900 uA"}, "unusualConfirmed": true, "noticedAt": "2026-05-05T12:00:00Z"}""".formatted(cells.get(cell), station, 300 + number % 300);
    }
}
