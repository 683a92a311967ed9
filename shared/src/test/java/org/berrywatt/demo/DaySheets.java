package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The files about the day, its teams and its light. */
final class DaySheets {

    private DaySheets() {}

    static Sheet labDay() {
        List<Object> day = List.of(
                Scenario.id("day"),
                Scenario.TITLE,
                Scenario.START.toLocalDate(),
                "50 W/m2",
                "2,25 cm2",
                "medianOfDeclared",
                3,
                true,
                When.of(Scenario.START));
        List<String> columns = List.of(
                "id",
                "title",
                "date",
                "reference_irradiance",
                "reference_area",
                "rule",
                "cells_per_team",
                "teams_create_themselves",
                "at");
        return new Sheet("labday.csv", columns, List.of(day));
    }

    static Sheet teams() {
        List<List<Object>> rows = IntStream.range(0, Team.ALL.size())
                .mapToObj(number -> team(Team.ALL.get(number), Scenario.START.plusSeconds(240 + 70L * number)))
                .toList();
        return new Sheet("teams.csv", List.of("id", "name", "at"), rows);
    }

    private static List<Object> team(Team team, LocalDateTime at) {
        return List.of(team.id(), team.name(), When.of(at));
    }

    static Sheet stations() {
        List<List<Object>> rows = IntStream.range(0, Station.ALL.size())
                .mapToObj(number -> station(Station.ALL.get(number), Scenario.at(11, 45 + 2 * number)))
                .toList();
        return new Sheet("stations.csv", List.of("id", "name", "lamp", "instrument", "distance", "angle", "at"), rows);
    }

    private static List<Object> station(Station station, LocalDateTime at) {
        return List.of(
                station.id(),
                station.name(),
                station.lamp(),
                station.instrument(),
                station.distance(),
                station.angle(),
                When.of(at));
    }

    static Sheet irradiances() {
        List<List<Object>> rows = Station.ALL.stream()
                .flatMap(DaySheets::watched)
                .sorted(Comparator.comparing(LightEntry::at))
                .map(LightEntry::row)
                .toList();
        return new Sheet("irradiances.csv", List.of("id", "station_id", "reading", "at"), rows);
    }

    private static Stream<LightEntry> watched(Station station) {
        LocalDateTime first = Scenario.at(13, 25).plusMinutes(2L * Station.ALL.indexOf(station));
        return Stream.iterate(first, Scenario.BELL::isAfter, at -> at.plusMinutes(station.everyMin()))
                .map(at -> new LightEntry(station, at));
    }

    private record LightEntry(Station station, LocalDateTime at) {
        List<Object> row() {
            return List.of(Scenario.id("light " + station.name() + at), station.id(), station.shown(at), When.of(at));
        }
    }
}
