package org.berrywatt.leaderboard;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The figure of a team under a rule, from cells that count and cells that count as 0. */
record TeamFigure(List<Combination> worstFirst) {

    /** Cells in any order; equal values are told apart by the cell's identity, so that order never matters. */
    static TeamFigure of(List<CellEntry.Counts> cells, int zeros) {
        var counting = cells.stream()
                .sorted(Comparator.comparingDouble((CellEntry.Counts cell) ->
                                cell.powerDensityWm2().value())
                        .thenComparing(CellEntry.Counts::cellId))
                .map(Combination::of);
        return new TeamFigure(
                Stream.concat(Stream.generate(() -> Combination.ZERO).limit(zeros), counting)
                        .toList());
    }

    Combination under(Rule rule) {
        return switch (rule) {
            case MEDIAN_OF_DECLARED -> median();
            case BEST_CELL -> worstFirst.get(worstFirst.size() - 1);
            case MEAN_OF_DECLARED -> mean();
        };
    }

    private Combination median() {
        var upper = worstFirst.get(worstFirst.size() / 2);
        var lower = worstFirst.get((worstFirst.size() - 1) / 2);
        return worstFirst.size() % 2 == 1 ? upper : lower.plus(upper).times(0.5);
    }

    private Combination mean() {
        return worstFirst.stream().reduce(Combination.ZERO, Combination::plus).times(1.0 / worstFirst.size());
    }
}
