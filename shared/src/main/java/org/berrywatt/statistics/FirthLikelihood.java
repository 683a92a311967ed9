package org.berrywatt.statistics;

import java.util.Arrays;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Penalised log likelihood of a logistic model and its greatest value. */
final class FirthLikelihood {

    private static final int MOST_STEPS = 2_000;
    private static final double LONGEST_STEP = 5;
    private static final int MOST_HALVINGS = 30;
    private static final double STILL = 1e-11;

    private final double[] scale;
    private final LogisticRows rows;

    FirthLikelihood(double[][] rows, int[] successes, int[] totals) {
        this.scale = new double[rows[0].length];
        for (double[] row : rows) {
            Arrays.setAll(scale, column -> Math.max(scale[column], Math.abs(row[column])));
        }
        double[][] scaled = Arrays.stream(rows).map(row -> divided(row, scale)).toArray(double[][]::new);
        this.rows = new LogisticRows(scaled, successes, totals);
    }

    /** Whether the columns are independent. */
    boolean isDetermined() {
        boolean filled = Arrays.stream(scale).allMatch(size -> size > 0);
        return filled
                && new LUDecomposition(rows.information(new double[scale.length]), 1e-12)
                        .getSolver()
                        .isNonSingular();
    }

    double value(double[] coefficients) {
        // the determinant is that of scaled columns
        return scaledValue(times(coefficients))
                + Arrays.stream(scale).map(Math::log).sum();
    }

    private double scaledValue(double[] at) {
        double determinant = new LUDecomposition(rows.information(at), 0).getDeterminant();
        return 0.5 * Math.log(determinant) + rows.logLikelihood(at);
    }

    double[] standardErrors(double[] coefficients) {
        RealMatrix inverse = LogisticRows.inverse(rows.information(times(coefficients)));
        double[] errors = new double[scale.length];
        Arrays.setAll(errors, column -> Math.sqrt(inverse.getEntry(column, column)) / scale[column]);
        return errors;
    }

    /** Coefficients of the greatest value, sought from a start; one of them keeps its start unless {@code held} is -1. */
    double[] maximise(double[] start, int held) {
        double[] at = times(start);
        double value = scaledValue(at);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] next = better(at, value, held);
            double gained = scaledValue(next) - value;
            double moved = distance(at, next);
            at = next;
            value += gained;
            if (!(moved > STILL)) {
                break;
            }
        }
        return divided(at, scale);
    }

    /** One scoring step, halved until it does not lose; the same place when there is no way on. */
    private double[] better(double[] at, double value, int held) {
        double[] step = step(at, held);
        for (int halvings = 0; halvings < MOST_HALVINGS; halvings++) {
            double share = Math.pow(0.5, halvings);
            double[] next = at.clone();
            Arrays.setAll(next, column -> at[column] + share * step[column]);
            if (scaledValue(next) >= value - 1e-12) {
                return next;
            }
        }
        return at;
    }

    private double[] step(double[] at, int held) {
        RealMatrix information = rows.information(at);
        if (!new LUDecomposition(information, 0).getSolver().isNonSingular()) {
            return new double[at.length];
        }
        double[] score = rows.score(at, LogisticRows.inverse(information));
        if (held >= 0) {
            hold(information, score, held);
        }
        double[] step = LogisticRows.inverse(information).operate(score);
        double longest = Arrays.stream(step).map(Math::abs).max().orElse(0);
        double shorter = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
        Arrays.setAll(step, column -> step[column] * shorter);
        return step;
    }

    private static double distance(double[] a, double[] b) {
        double most = 0;
        for (int i = 0; i < a.length; i++) {
            most = Math.max(most, Math.abs(a[i] - b[i]));
        }
        return most;
    }

    private static void hold(RealMatrix information, double[] score, int held) {
        for (int other = 0; other < score.length; other++) {
            information.setEntry(held, other, 0);
            information.setEntry(other, held, 0);
        }
        information.setEntry(held, held, 1);
        score[held] = 0;
    }

    private double[] times(double[] coefficients) {
        double[] scaled = coefficients.clone();
        Arrays.setAll(scaled, column -> scaled[column] * scale[column]);
        return scaled;
    }

    private static double[] divided(double[] values, double[] by) {
        double[] quotients = values.clone();
        Arrays.setAll(quotients, column -> quotients[column] / by[column]);
        return quotients;
    }
}
