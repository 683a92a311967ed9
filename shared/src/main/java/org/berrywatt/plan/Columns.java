package org.berrywatt.plan;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** Columns of numbers, one row for each cell of a design. */
final class Columns {

    private Columns() {}

    /** The main effects of a design, as coded. */
    static double[][] effects(Design design, Coding coding) {
        return design.runs().stream().map(run -> coding.row(run.levels())).toArray(double[][]::new);
    }

    /** Which cell is of which team. */
    static double[][] teams(Design design) {
        var blocks = design.runs().stream().map(Run::block).distinct().toList();
        double[][] teams = new double[design.runs().size()][blocks.size()];
        for (int run = 0; run < teams.length; run++) {
            teams[run][blocks.indexOf(design.runs().get(run).block())] = 1;
        }
        return teams;
    }

    static double[][] part(double[][] columns, int from, int width) {
        return Arrays.stream(columns)
                .map(row -> Arrays.copyOfRange(row, from, from + width))
                .toArray(double[][]::new);
    }

    /** Every product of a column of the one with a column of the other. */
    static double[][] products(double[][] one, double[][] other) {
        double[][] products = new double[one.length][];
        for (int run = 0; run < one.length; run++) {
            products[run] = products(one[run], other[run]);
        }
        return products;
    }

    private static double[] products(double[] one, double[] other) {
        return Arrays.stream(one)
                .flatMap(a -> Arrays.stream(other).map(b -> a * b))
                .toArray();
    }

    /** What of the columns differs within teams: each team's mean is taken off. */
    static double[][] withinTeams(Design design, double[][] columns) {
        return less(columns, design.runs().stream().map(Run::block).toList());
    }

    /** The columns with the mean of all cells taken off. */
    static double[][] aboutTheMean(double[][] columns) {
        return less(columns, Collections.nCopies(columns.length, 0));
    }

    private static double[][] less(double[][] columns, List<Integer> groups) {
        double[][] rest = new double[columns.length][];
        for (int run = 0; run < columns.length; run++) {
            rest[run] = columns[run].clone();
        }
        groups.stream().distinct().forEach(group -> takeOffMean(rest, groups, group));
        return rest;
    }

    private static void takeOffMean(double[][] columns, List<Integer> groups, int group) {
        for (int column = 0; column < columns[0].length; column++) {
            double sum = 0;
            int count = 0;
            for (int run = 0; run < columns.length; run++) {
                sum += groups.get(run) == group ? columns[run][column] : 0;
                count += groups.get(run) == group ? 1 : 0;
            }
            for (int run = 0; run < columns.length; run++) {
                columns[run][column] -= groups.get(run) == group ? sum / count : 0;
            }
        }
    }

    /** Products of the columns with each other, summed over the cells. */
    static RealMatrix information(double[][] columns) {
        var matrix = MatrixUtils.createRealMatrix(columns);
        return matrix.transposeMultiply(matrix);
    }
}
