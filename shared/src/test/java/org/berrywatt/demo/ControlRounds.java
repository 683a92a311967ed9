package org.berrywatt.demo;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The class's control cell: a strong one that is ready early and that nobody changes any more. Its team carries it round the
 * stations three times, while its meter is free and before the cell's own last visit, which is the one that counts.
 */
final class ControlRounds {

    private static final String LABEL = "D3";
    private static final LocalDateTime CHOSEN = Scenario.at(14, 6);
    private static final List<LocalDateTime> STARTS =
            List.of(Scenario.at(14, 10), Scenario.at(14, 59), Scenario.at(15, 27));
    private static final List<Station> WAY = List.of(Station.HALOGEN, Station.LED, Station.WINDOW);
    private static final Duration AT_ONE = Duration.ofSeconds(260);
    /** Beyond the rounds of a cell's own visits, so that each clipping has its own luck. */
    private static final int FIRST_ROUND = 30;

    private ControlRounds() {}

    static Sheet choice(List<Life> lives) {
        List<Object> row =
                List.of(Scenario.id("control cell"), life(lives).cell().id(), When.of(CHOSEN));
        return new Sheet("control-cell.csv", List.of("id", "cell_id", "at"), List.of(row));
    }

    static List<Visit> visits(List<Life> lives) {
        return IntStream.range(0, STARTS.size())
                .boxed()
                .flatMap(round -> round(life(lives), round))
                .toList();
    }

    private static Stream<Visit> round(Life life, int round) {
        return IntStream.range(0, WAY.size())
                .mapToObj(stop -> new Visit(
                        life,
                        FIRST_ROUND + round * WAY.size() + stop,
                        false,
                        WAY.get(stop),
                        STARTS.get(round).plus(AT_ONE.multipliedBy(stop))));
    }

    private static Life life(List<Life> lives) {
        return lives.stream()
                .filter(life -> life.cell().label().equals(LABEL))
                .findFirst()
                .orElseThrow();
    }
}
