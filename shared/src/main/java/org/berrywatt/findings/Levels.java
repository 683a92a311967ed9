package org.berrywatt.findings;

import static java.util.Comparator.comparingDouble;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Resampling;

/** All levels of a parameter that a cell was built at: numbers rising, sorts by key. */
record Levels(List<Level> all, int notRecorded) {

    static final int FEW = 6;

    /** Numbers with more levels are seldom shared by cells, and nobody asks for the interval of each. */
    private static final int MANY = 200;

    static Levels of(Study study, Factor factor, Resampling resampling) {
        int[][] cells = byLevel(study.size(), factor);
        Resampling draws = factor.isNumber() && cells.length > MANY ? Resampling.none() : resampling;
        List<Level> levels = IntStream.range(0, cells.length)
                .filter(level -> cells[level].length > 0)
                .mapToObj(level -> Level.of(study, factor, level, cells[level], draws))
                .toList();
        int recorded = Arrays.stream(cells).mapToInt(level -> level.length).sum();
        return new Levels(levels, study.size() - recorded);
    }

    private static int[][] byLevel(int size, Factor factor) {
        int[] counts = new int[factor.levels().size()];
        for (int cell = 0; cell < size; cell++) {
            if (factor.isRecorded(cell)) {
                counts[factor.code(cell)]++;
            }
        }
        int[][] cells = Arrays.stream(counts).mapToObj(int[]::new).toArray(int[][]::new);
        Arrays.fill(counts, 0);
        for (int cell = 0; cell < size; cell++) {
            if (factor.isRecorded(cell)) {
                int level = factor.code(cell);
                cells[level][counts[level]++] = cell;
            }
        }
        return cells;
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
    List<Level> telling() {
        List<Level> telling = all.stream().filter(level -> level.counted() >= 2).toList();
        return telling.size() >= 2 ? telling : withWorkingCells();
    }

    private static Comparator<Level> byMedian() {
        return comparingDouble(level -> level.median().orElse(Double.NEGATIVE_INFINITY));
    }
}
