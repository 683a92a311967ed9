package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.statistics.PivotedRank;

/**
 * The columns of a joint model: parameters that fit into it, in order. What varied within teams comes first, since a class draws
 * it from cell to cell, then what speaks more loudly alone. A parameter stays outside when it was not recorded for a cell in
 * five, has too many levels, follows from those before it, or would leave fewer than three cells for each column.
 */
final class JointTerms {

    private static final int CELLS_PER_COLUMN = 3;
    private static final int MOST_LEVELS = 60;
    private static final double RECORDED = 0.8;

    private final List<Look> taken = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private final List<double[]> columns = new ArrayList<>();
    private final List<int[]> places = new ArrayList<>();
    private final int[] cells;

    private JointTerms(Study study, List<Look> looks) {
        List<Look> wanted = looks.stream()
                .filter(Look::compares)
                .sorted(Comparator.comparing((Look look) -> look.entries().teamsOnly())
                        .thenComparingDouble(Look::p))
                .toList();
        int[] working = study.working();
        this.cells = wanted.stream()
                .filter(look -> wellRecorded(look, working))
                .map(Look::factor)
                .reduce(working, (rest, factor) -> factor.recordedAmong(rest), (a, b) -> a);
        wanted.forEach(look -> take(look, working));
    }

    static JointTerms of(Study study, List<Look> looks) {
        JointTerms first = new JointTerms(study, looks);
        // a parameter that stays outside must not cost the model the cells where it was not recorded
        JointTerms again = new JointTerms(study, first.taken);
        again.left.addAll(first.left);
        return again;
    }

    private static boolean wellRecorded(Look look, int[] working) {
        return look.factor().recordedAmong(working).length >= RECORDED * working.length;
    }

    private void take(Look look, int[] working) {
        List<double[]> own = wellRecorded(look, working) ? columns(look) : List.of();
        boolean room = (columns.size() + own.size() + 1) * CELLS_PER_COLUMN <= cells.length;
        if (own.isEmpty() || !room || !adds(own)) {
            left.add(look.factor().key());
            return;
        }
        int first = columns.size();
        columns.addAll(own);
        places.add(IntStream.range(first, columns.size()).toArray());
        taken.add(look);
    }

    private List<double[]> columns(Look look) {
        Factor factor = look.factor();
        int[] distinct =
                Arrays.stream(cells).map(factor::code).sorted().distinct().toArray();
        if (distinct.length < 2) {
            return List.of();
        }
        if (factor.isNumber() && distinct.length > 2) {
            return List.of(Arrays.stream(cells).mapToDouble(factor::numberAt).toArray());
        }
        return distinct.length > MOST_LEVELS
                ? List.of()
                : Arrays.stream(distinct)
                        .skip(1)
                        .mapToObj(level -> Arrays.stream(cells)
                                .mapToDouble(cell -> factor.code(cell) == level ? 1 : 0)
                                .toArray())
                        .toList();
    }

    private boolean adds(List<double[]> own) {
        List<double[]> all = new ArrayList<>(columns);
        all.addAll(own);
        return new PivotedRank(Products.centred(all), all.size(), 1e-8).isFull();
    }

    List<Look> taken() {
        return taken;
    }

    List<String> left() {
        return left;
    }

    double[][] columns() {
        return columns.toArray(double[][]::new);
    }

    /** Columns of a term. */
    int[] places(int term) {
        return places.get(term);
    }

    int[] cells() {
        return cells;
    }
}
