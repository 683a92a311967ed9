package org.berrywatt.findings;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.findings.JointModel.Mean;
import org.berrywatt.statistics.RandomIntercept;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/**
 * What the joint model expects at each level of a parameter with all other columns at their mean. Source: S. R. Searle, F. M.
 * Speed and G. A. Milliken, The American Statistician 34 (1980) 216-221.
 */
final class MarginalMeans {

    private MarginalMeans() {}

    static List<Mean> of(JointTerms terms, RandomIntercept fit, int term, int degrees) {
        Factor factor = terms.taken().get(term).factor();
        int[] levels = Arrays.stream(terms.cells())
                .map(factor::code)
                .sorted()
                .distinct()
                .toArray();
        int[] places = terms.places(term);
        if (factor.isNumber() && levels.length > 2) {
            return IntStream.of(levels[0], levels[levels.length - 1])
                    .mapToObj(level -> mean(
                            factor.levels().get(level),
                            weights(
                                    terms,
                                    places,
                                    places[0],
                                    factor.number(level).orElseThrow()),
                            fit,
                            degrees))
                    .toList();
        }
        return IntStream.range(0, levels.length)
                .mapToObj(at -> mean(
                        factor.levels().get(levels[at]),
                        weights(terms, places, at == 0 ? -1 : places[at - 1], 1),
                        fit,
                        degrees))
                .toList();
    }

    private static double[] weights(JointTerms terms, int[] own, int set, double value) {
        double[][] columns = terms.columns();
        double[] weights = new double[columns.length + 1];
        weights[0] = 1;
        for (int column = 0; column < columns.length; column++) {
            int at = column;
            boolean mine = Arrays.stream(own).anyMatch(place -> place == at);
            weights[column + 1] =
                    mine ? 0 : Arrays.stream(columns[column]).average().orElse(0);
        }
        if (set >= 0) {
            weights[set + 1] = value;
        }
        return weights;
    }

    private static Mean mean(String level, double[] weights, RandomIntercept fit, int degrees) {
        RealVector weight = new ArrayRealVector(weights);
        double log = weight.dotProduct(new ArrayRealVector(fit.coefficients()));
        double half = Math.sqrt(weight.dotProduct(fit.covariance().operate(weight)))
                * new TDistribution(degrees).inverseCumulativeProbability(0.975);
        return new Mean(level, Math.exp(log), Math.exp(log - half), Math.exp(log + half));
    }
}
