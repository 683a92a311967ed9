package org.berrywatt.statistics;

import java.util.function.IntFunction;
import org.berrywatt.statistics.Blocks.Block;

/** Turns the sum of deviations in every group into the statistic of a blocked test. */
final class DealtSums {

    private static final double NOTHING = 1e-10;

    private final double[][] whitening;
    private final double found;

    private DealtSums(double[][] whitening, double found) {
        this.whitening = whitening;
        this.found = found;
    }

    /** @param weights what a group's sum adds to each component of T */
    static DealtSums of(Blocks blocks, IntFunction<double[]> weights) {
        int groups = blocks.groupCount();
        double[][] weight = new double[groups][];
        for (int group = 0; group < groups; group++) {
            weight[group] = weights.apply(group);
        }
        double[][] whitening = whitening(covariance(blocks, weight), weight);
        double[] sums = new double[groups];
        for (Block block : blocks.all()) {
            for (int i = 0; i < block.size(); i++) {
                sums[block.groups[i]] += block.deviations[i];
            }
        }
        return new DealtSums(whitening, square(whitening, sums));
    }

    private static double[][] covariance(Blocks blocks, double[][] weight) {
        int width = weight[0].length;
        double[][] covariance = new double[width][width];
        for (Block block : blocks.all()) {
            double variance = block.squares() / (block.size() - 1);
            double[] sum = new double[width];
            for (int group : block.groups) {
                addProducts(covariance, weight[group], variance);
                for (int i = 0; i < width; i++) {
                    sum[i] += weight[group][i];
                }
            }
            addProducts(covariance, sum, -variance / block.size());
        }
        return covariance;
    }

    private static void addProducts(double[][] products, double[] row, double factor) {
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                for (int j = 0; j < row.length; j++) {
                    products[i][j] += factor * row[i] * row[j];
                }
            }
        }
    }

    /** Rows that turn sums of groups into independent components of variance one. */
    private static double[][] whitening(double[][] covariance, double[][] weight) {
        PivotedCholesky factor = PivotedCholesky.of(covariance, NOTHING);
        double[][] rows = new double[factor.rank()][weight.length];
        double[] chosen = new double[factor.rank()];
        for (int group = 0; group < weight.length; group++) {
            for (int part = 0; part < chosen.length; part++) {
                chosen[part] = weight[group][factor.pivot(part)];
            }
            double[] solved = factor.solveLower(chosen);
            for (int part = 0; part < solved.length; part++) {
                rows[part][group] = solved[part];
            }
        }
        return rows;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double square(double[][] whitening, double[] sums) {
        double square = 0;
        for (double[] row : whitening) {
            double part = dot(row, sums);
            square += part * part;
        }
        return square;
    }

    int rank() {
        return whitening.length;
    }

    double found() {
        return found;
    }

    double statistic(double[] sums) {
        return square(whitening, sums);
    }
}
