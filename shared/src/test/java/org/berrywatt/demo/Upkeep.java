package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What was done to finished cells between two visits, and what the teacher kept out of the results. */
record Upkeep(List<Visit> visits) {

    private static final List<String> REFILLED = List.of("D2", "G1", "L3");
    private static final String CLIP_MOVED = "F3";
    private static final String LAMP_KNOCKED = "L2";

    Sheet events() {
        List<List<Object>> rows = Stream.concat(
                        again().filter(visit -> REFILLED.contains(label(visit)))
                                .map(visit -> new Event(visit, "refill", "one more drop, edges had gone pale")),
                        again().filter(visit -> label(visit).equals(CLIP_MOVED))
                                .map(visit -> new Event(visit, "repair", "clip moved off the paste")))
                .sorted(Comparator.comparing(Event::at))
                .map(Event::row)
                .toList();
        return new Sheet("cell-events.csv", List.of("id", "cell_id", "kind", "note", "at"), rows);
    }

    /** The first light reading of a cell that was read again later. */
    Sheet setAsides() {
        List<List<Object>> rows = visits.stream()
                .filter(visit -> visit.round() == 0 && label(visit).equals(LAMP_KNOCKED))
                .map(Upkeep::knocked)
                .toList();
        return new Sheet("set-asides.csv", List.of("id", "reading_id", "reason", "at"), rows);
    }

    private static List<Object> knocked(Visit visit) {
        return List.of(
                Scenario.id("set aside " + label(visit)),
                Scenario.id("reading " + label(visit) + " 0 light"),
                "Somebody leaned on the lamp while it was read",
                When.of(visit.at().plusMinutes(6)));
    }

    /** The second visit of each cell. */
    private Stream<Visit> again() {
        return visits.stream().filter(visit -> visit.round() == 1);
    }

    private static String label(Visit visit) {
        return visit.life().cell().label();
    }

    /** Something done twelve minutes before a visit, so that the cell has settled by then. */
    private record Event(Visit visit, String kind, String note) {

        LocalDateTime at() {
            return visit.at().minusMinutes(12);
        }

        List<Object> row() {
            return List.of(
                    Scenario.id(kind + " " + label(visit)), visit.life().cell().id(), kind, note, When.of(at()));
        }
    }
}
