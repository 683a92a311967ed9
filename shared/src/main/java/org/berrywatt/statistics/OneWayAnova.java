package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.List;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.hipparchus.special.Beta;

/**
 * One-way analysis of variance: do the groups' means differ more than their spread would have it?
 *
 * <p>Sums of squares are taken about means that were corrected by the mean of their own residuals, so that large offsets cost
 * no digits that the data still hold. Source: R. A. Fisher, Statistical Methods for Research Workers (1925), chapter 7.
 *
 * @param squaresBetween in [0, ∞)
 * @param squaresWithin in (0, ∞)
 * @param f ratio of the mean squares, in [0, ∞)
 * @param p in [0, 1]
 */
public record OneWayAnova(
        int degreesBetween, int degreesWithin, double squaresBetween, double squaresWithin, double f, double p) {

    /**
     * Compares groups; empty groups are passed over.
     *
     * @return no answer for numbers that are not finite, fewer than two groups, no value beyond one for each group, or
     *     groups without any spread
     */
    public static Answer<OneWayAnova> of(List<double[]> groups) {
        List<double[]> filled =
                groups.stream().filter(group -> group.length > 0).toList();
        double[] all = filled.stream().flatMapToDouble(Arrays::stream).toArray();
        if (!Ranks.allFinite(all)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        if (filled.size() < 2) {
            return new Withheld<>(Reason.ONE_GROUP);
        }
        return all.length <= filled.size() ? new Withheld<>(Reason.TOO_FEW) : compare(filled, all);
    }

    private static Answer<OneWayAnova> compare(List<double[]> groups, double[] all) {
        double origin = mean(all);
        double rest = Arrays.stream(all).map(value -> value - origin).sum() / all.length;
        double between = 0;
        double within = 0;
        for (double[] group : groups) {
            double mean = mean(group);
            double off = (mean - origin) - rest;
            between += group.length * off * off;
            within += Arrays.stream(group)
                    .map(value -> (value - mean) * (value - mean))
                    .sum();
        }
        return within == 0
                ? new Withheld<>(Reason.ALL_EQUAL)
                : new Given<>(of(groups.size() - 1, all.length - groups.size(), between, within));
    }

    private static double mean(double[] values) {
        double first = Arrays.stream(values).average().orElseThrow();
        return first + Arrays.stream(values).map(value -> value - first).sum() / values.length;
    }

    private static OneWayAnova of(int degreesBetween, int degreesWithin, double between, double within) {
        double f = between / degreesBetween / (within / degreesWithin);
        // the upper tail of F, by the symmetry of the incomplete beta function
        double p = Beta.regularizedBeta(
                degreesWithin / (degreesWithin + degreesBetween * f), degreesWithin / 2.0, degreesBetween / 2.0);
        return new OneWayAnova(degreesBetween, degreesWithin, between, within, f, p);
    }
}
