package org.berrywatt.findings;

import static java.util.Comparator.comparing;
import static java.util.Comparator.comparingDouble;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsLast;
import static java.util.stream.Collectors.groupingBy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** All levels of a parameter: numbers ascending, sorts by key. */
record Levels(List<Level> all) {

    private static final int FEW = 6;

    static Levels of(List<Observation> cells) {
        return new Levels(cells.stream()
                .filter(Observation::recorded)
                .collect(groupingBy(cell -> String.valueOf(cell.level())))
                .values()
                .stream()
                .map(Level::of)
                .sorted(comparing(Level::number, nullsLast(naturalOrder())).thenComparing(Level::key))
                .toList());
    }

    int made() {
        return sum(Level::made);
    }

    int counted() {
        return sum(Level::counted);
    }

    int failed() {
        return sum(Level::failed);
    }

    int waiting() {
        return made() - counted() - failed();
    }

    private int sum(ToIntFunction<Level> property) {
        return all.stream().mapToInt(property).sum();
    }

    List<Level> withWorkingCells() {
        return all.stream().filter(level -> level.counted() > 0).toList();
    }

    /** Whether numbers come in few levels with two working cells each on average, so that levels can be compared. */
    boolean areFew() {
        return all.size() <= FEW && counted() >= 2 * withWorkingCells().size();
    }

    /** A level that only one team used cannot be told from that team. */
    boolean haveOneTeamEach() {
        return areFew() && withWorkingCells().stream().allMatch(level -> level.teams() == 1);
    }

    Optional<Level> best() {
        return telling().stream().max(byMedian());
    }

    Optional<Level> worst() {
        return telling().stream().min(byMedian());
    }

    /** One cell makes a poor median: levels with two working cells or more, when there are two such levels. */
    private List<Level> telling() {
        List<Level> telling = all.stream().filter(level -> level.counted() >= 2).toList();
        return telling.size() >= 2 ? telling : withWorkingCells();
    }

    private static Comparator<Level> byMedian() {
        return comparingDouble(level -> level.medianWm2().orElse(Double.NEGATIVE_INFINITY));
    }
}
