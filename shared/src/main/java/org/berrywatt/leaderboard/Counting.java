package org.berrywatt.leaderboard;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Makes one number of a team's cells, of their results as of every trial. */
final class Counting {
    private static final Comparator<CellEntry.Counts> WORST_FIRST =
            Comparator.comparingDouble(CellEntry.Counts::value).thenComparing(CellEntry.Counts::cellId);

    private final List<CellEntry.Counts> worstFirst;
    private final int zeros;

    /** Cells in any order; equal values are told apart by the cell's identity, so that order never matters. */
    Counting(List<CellEntry.Counts> cells, int zeros) {
        this.worstFirst = cells.stream().sorted(WORST_FIRST).toList();
        this.zeros = zeros;
    }

    int working() {
        return worstFirst.size();
    }

    int declared() {
        return zeros + worstFirst.size();
    }

    double value(Count count) {
        return count == Count.BEST_VERIFIED && !worstFirst.isEmpty() ? best().value() : of(count, values());
    }

    double[] trials(Count count, int trials) {
        if (count == Count.BEST_VERIFIED && !worstFirst.isEmpty()) {
            return best().trials().values();
        }
        return IntStream.range(0, trials)
                .mapToDouble(trial -> of(count, drawn(trial)))
                .toArray();
    }

    /** The best cell is the one with the best result; the best of the trials would take the luckiest draw each time. */
    private CellEntry.Counts best() {
        return worstFirst.get(worstFirst.size() - 1);
    }

    private double[] values() {
        double[] values = new double[zeros + worstFirst.size()];
        for (int i = 0; i < worstFirst.size(); i++) {
            values[zeros + i] = worstFirst.get(i).value();
        }
        return values;
    }

    private double[] drawn(int trial) {
        double[] values = new double[zeros + worstFirst.size()];
        for (int i = 0; i < worstFirst.size(); i++) {
            values[zeros + i] = worstFirst.get(i).trials().in(trial);
        }
        return values;
    }

    private static double of(Count count, double[] values) {
        return count == Count.MEAN ? Arrays.stream(values).sum() / values.length : median(values);
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        double upper = values[values.length / 2];
        double lower = values[(values.length - 1) / 2];
        return (lower + upper) / 2;
    }
}
