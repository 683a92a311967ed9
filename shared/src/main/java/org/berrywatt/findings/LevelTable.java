package org.berrywatt.findings;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Cells counted by the levels of two parameters; numbers with many values stand as ranges. */
public final class LevelTable {

    private final String[] rowNames;
    private final String[] columnNames;
    private final int[][] counts;

    private LevelTable(String[] rowNames, String[] columnNames, int[][] counts) {
        this.rowNames = rowNames;
        this.columnNames = columnNames;
        this.counts = counts;
    }

    static LevelTable of(Factor first, Factor second, int[] cells) {
        int[] rows = Confounding.dense(first.groups(cells, Levels.FEW));
        int[] columns = Confounding.dense(second.groups(cells, Levels.FEW));
        String[] rowNames = names(first, cells, rows);
        String[] columnNames = names(second, cells, columns);
        int[][] counts = new int[rowNames.length][columnNames.length];
        for (int i = 0; i < cells.length; i++) {
            counts[rows[i]][columns[i]]++;
        }
        return new LevelTable(rowNames, columnNames, counts);
    }

    /** The level, or the least and the greatest of a range. */
    private static String[] names(Factor factor, int[] cells, int[] groups) {
        int count = Arrays.stream(groups).max().orElse(-1) + 1;
        int[] low = new int[count];
        int[] high = new int[count];
        Arrays.fill(low, Integer.MAX_VALUE);
        Arrays.fill(high, Integer.MIN_VALUE);
        for (int i = 0; i < cells.length; i++) {
            low[groups[i]] = Math.min(low[groups[i]], factor.code(cells[i]));
            high[groups[i]] = Math.max(high[groups[i]], factor.code(cells[i]));
        }
        return IntStream.range(0, count)
                .mapToObj(group -> low[group] == high[group]
                        ? factor.levels().get(low[group])
                        : factor.levels().get(low[group]) + "…"
                                + factor.levels().get(high[group]))
                .toArray(String[]::new);
    }

    int[][] counts() {
        return counts;
    }

    public int rows() {
        return rowNames.length;
    }

    public int columns() {
        return columnNames.length;
    }

    public String row(int index) {
        return rowNames[index];
    }

    public String column(int index) {
        return columnNames[index];
    }

    public int count(int row, int column) {
        return counts[row][column];
    }

    /** Pieces of the table: two levels are in one piece when cells lead from one to the other. */
    int pieces() {
        int[] piece = IntStream.range(0, rows() + columns()).toArray();
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                if (counts[row][column] > 0) {
                    piece[root(piece, row)] = root(piece, rows() + column);
                }
            }
        }
        return (int) IntStream.range(0, piece.length)
                .map(node -> root(piece, node))
                .distinct()
                .count();
    }

    private static int root(int[] piece, int node) {
        int at = node;
        while (piece[at] != at) {
            at = piece[at];
        }
        return at;
    }
}
