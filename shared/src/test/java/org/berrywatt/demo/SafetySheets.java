package org.berrywatt.demo;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.safety.Zone;

/** The files about the teacher's briefings and the log of incidents. */
final class SafetySheets {

    private SafetySheets() {}

    /** Acid before the paste, heat before the plates, flame before the candle bench; each until the bell. */
    static Sheet signOffs() {
        List<List<Object>> rows = IntStream.range(0, Team.ALL.size())
                .boxed()
                .flatMap(number -> ofTeam(Team.ALL.get(number), number))
                .sorted(Comparator.comparing(SignOff::at))
                .map(SignOff::row)
                .toList();
        return new Sheet("sign-offs.csv", List.of("id", "team_id", "zone", "points", "minutes", "reason", "at"), rows);
    }

    static Sheet incidents() {
        List<List<Object>> rows = List.of(
                incident(
                        "Linnets",
                        Zone.GLASS,
                        "A plate slipped while it was being taped and broke on the floor; nobody was hurt.",
                        "Pieces counted into the sharps box, floor wiped.",
                        Scenario.at(12, 4)),
                incident(
                        "Wrens",
                        Zone.HEAT,
                        "Tongs were laid down with their hot end across the line.",
                        "Moved back with a glove; tongs now have a tray of their own.",
                        Scenario.at(13, 16)));
        return new Sheet("incidents.csv", List.of("id", "team_id", "zone", "happened", "done", "at"), rows);
    }

    private static Stream<SignOff> ofTeam(Team team, int number) {
        Stream<SignOff> acid = team.acid().equals("acetic")
                ? Stream.of(
                        new SignOff(team, Zone.CORROSIVES, Scenario.at(11, 50).plusSeconds(20L * number)))
                : Stream.empty();
        return Stream.concat(
                acid,
                Stream.of(
                        new SignOff(team, Zone.HEAT, Scenario.at(12, 8).plusSeconds(25L * number)),
                        new SignOff(team, Zone.FLAME, Scenario.at(13, 26).plusSeconds(25L * number))));
    }

    private static List<Object> incident(String team, Zone zone, String happened, String done, LocalDateTime at) {
        return List.of(
                Scenario.id("incident " + team), Scenario.id("team " + team), zone.key(), happened, done, When.of(at));
    }

    private record SignOff(Team team, Zone zone, LocalDateTime at) {

        List<Object> row() {
            return List.of(
                    Scenario.id("sign-off " + team.name() + " " + zone.key()),
                    team.id(),
                    zone.key(),
                    String.join(
                            " ", late() ? zone.points().subList(0, zone.points().size() - 1) : zone.points()),
                    Duration.between(at, Scenario.BELL).toMinutes(),
                    late() ? "Joined the briefing late; the technician stands beside them at the candle" : "",
                    When.of(at));
        }

        private boolean late() {
            return team.name().equals("Newts") && zone == Zone.FLAME;
        }
    }
}
