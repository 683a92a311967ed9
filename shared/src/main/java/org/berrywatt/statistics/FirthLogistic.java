package org.berrywatt.statistics;

import java.util.Arrays;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;

/**
 * Logistic regression of successes with Firth's penalty, which stays finite when a column parts successes from failures
 * without overlap: the normal case in a class.
 *
 * <p>Maximises the log likelihood plus half the log determinant of the information. Tests and intervals of a coefficient
 * compare penalised likelihoods, with the penalty of the whole model. Sources: D. Firth, Biometrika 80 (1993) 27-38; G. Heinze
 * and M. Schemper, Statistics in Medicine 21 (2002) 2409-2419.
 */
public final class FirthLogistic {

    private static final double HALF_CHI_SQUARED_95 = 3.841458820694124 / 2;
    private static final int HALVINGS = 60;
    private static final int DOUBLINGS = 40;

    private final FirthLikelihood model;
    private final double[] coefficients;
    private final double[] standardErrors;
    private final double logLikelihood;

    private FirthLogistic(FirthLikelihood model, int columns) {
        this.model = model;
        this.coefficients = model.maximise(new double[columns], -1);
        this.standardErrors = model.standardErrors(coefficients);
        this.logLikelihood = model.value(coefficients);
    }

    /**
     * Fits rows that share their explaining values.
     *
     * @param x rows of explaining values, a column of ones included where an intercept is wanted
     * @param successes of each row, in [0, total]
     * @param totals of each row, in [0, ∞)
     * @return no answer for numbers that are not finite, fewer than three trials, all or no trials a success, or columns that
     *     depend on each other
     */
    public static Answer<FirthLogistic> fit(double[][] x, int[] successes, int[] totals) {
        if (!Arrays.stream(x).allMatch(Ranks::allFinite)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        int trials = Arrays.stream(totals).sum();
        int worked = Arrays.stream(successes).sum();
        if (trials < 3) {
            return new Withheld<>(Reason.TOO_FEW);
        }
        if (worked == 0 || worked == trials) {
            return new Withheld<>(Reason.ALL_EQUAL);
        }
        FirthLikelihood model = new FirthLikelihood(x, successes, totals);
        return model.isDetermined()
                ? new Given<>(new FirthLogistic(model, x[0].length))
                : new Withheld<>(Reason.DEPENDENT_COLUMNS);
    }

    public double[] coefficients() {
        return coefficients.clone();
    }

    public double[] standardErrors() {
        return standardErrors.clone();
    }

    public double penalisedLogLikelihood() {
        return logLikelihood;
    }

    /** Twice the penalised log likelihood lost without the column. */
    public double likelihoodRatio(int column) {
        return 2 * lost(column, new double[coefficients.length]);
    }

    /** Two-sided p of a column, in [0, 1]. */
    public double p(int column) {
        return ChiSquared.beyond(1, Math.max(0, likelihoodRatio(column)));
    }

    /** Lower end of the 95 % profile interval of a coefficient. */
    public double low(int column) {
        return end(column, -1);
    }

    /** Upper end of the 95 % profile interval of a coefficient. */
    public double high(int column) {
        return end(column, 1);
    }

    /** Chance of success at a row of explaining values. */
    public double chance(double... x) {
        double sum = 0;
        for (int column = 0; column < x.length; column++) {
            sum += x[column] * coefficients[column];
        }
        return 1 / (1 + Math.exp(-sum));
    }

    private double lost(int column, double value) {
        double[] start = coefficients.clone();
        start[column] = value;
        return lost(column, start);
    }

    /** @param start where the search for the others begins, and the column's value; nearby, or all zero from far away */
    private double lost(int column, double[] start) {
        return logLikelihood - model.value(model.maximise(start, column));
    }

    private double end(int column, int side) {
        double step = standardErrors[column];
        int doublings = 0;
        while (lost(column, coefficients[column] + side * step) < HALF_CHI_SQUARED_95 && doublings++ < DOUBLINGS) {
            step *= 2;
        }
        double within = 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (within + step) / 2;
            if (lost(column, coefficients[column] + side * middle) < HALF_CHI_SQUARED_95) {
                within = middle;
            } else {
                step = middle;
            }
        }
        return coefficients[column] + side * within;
    }
}
