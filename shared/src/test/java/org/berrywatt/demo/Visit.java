package org.berrywatt.demo;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A cell at a light station: covered, then lit, then perhaps swept with loads.
 *
 * @param round 0 for the cell's first visit
 */
record Visit(Life life, int round, boolean sweep, Station station, LocalDateTime at) {

    private static final int WAITS_FOR_BATTERY_MIN = 38;
    private static final int COMES_AGAIN_MIN = 48;

    /** Everyone's visits in the order of time: whoever comes first is served first. */
    static List<Visit> ofAll(List<Life> lives) {
        Map<Station, LocalDateTime> free = new HashMap<>();
        List<Visit> visits = new ArrayList<>();
        lives.stream()
                .filter(Life::reachesTheMeter)
                .flatMap(Visit::wished)
                .sorted(byTime())
                .forEach(wish -> {
                    LocalDateTime start = later(wish.at, free.getOrDefault(wish.station, wish.at));
                    Duration takes = Duration.ofSeconds(wish.sweep ? 540 : 250);
                    if (start.plus(takes).isBefore(Scenario.BELL)) {
                        free.put(wish.station, start.plus(takes));
                        visits.add(new Visit(wish.life, wish.round, wish.sweep, wish.station, start));
                    }
                });
        return visits.stream().sorted(byTime()).toList();
    }

    private static Comparator<Visit> byTime() {
        return Comparator.comparing(Visit::at)
                .thenComparing(visit -> visit.life.cell().label());
    }

    private static LocalDateTime later(LocalDateTime one, LocalDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    private static Stream<Visit> wished(Life life) {
        PlannedCell cell = life.cell();
        boolean battery = Battery.of(cell).matters();
        int pause = battery ? WAITS_FOR_BATTERY_MIN : COMES_AGAIN_MIN;
        LocalDateTime first = life.filled().plusMinutes(8);
        return IntStream.range(0, rounds(life))
                .mapToObj(round -> new Visit(
                        life,
                        round,
                        round == sweepRound(life),
                        station(cell, round),
                        first.plusMinutes((long) round * pause)));
    }

    private static int rounds(Life life) {
        if (life.fate().stage() != null) {
            return 1;
        }
        return Battery.of(life.cell()).matters()
                ? 3
                : life.cell().draws("again").between(1, 3);
    }

    /** A sweep takes time: most cells get one, at their last visit. */
    private static int sweepRound(Life life) {
        boolean swept =
                life.fate().stage() == null && life.cell().draws("sweeps").happens(0.85);
        return swept ? rounds(life) - 1 : -1;
    }

    private static Station station(PlannedCell cell, int round) {
        int team = Team.ALL.indexOf(cell.team());
        return Station.ALL.get((team + cell.place() + round) % 3);
    }
}
