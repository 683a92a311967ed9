package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Theil and Sen's slope: the median slope over all pairs of points with different x. One wild point moves it little.
 *
 * <p>The 95 % interval takes the slopes at ranks (N ± 1.96 sqrt(var S))/2, where var S is the variance of Kendall's S with
 * ties. Beyond {@value #MOST_POINTS} points an even selection of that many stands for all. Sources: P. K. Sen, Journal of
 * the American Statistical Association 63 (1968) 1379-1389; M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods
 * (1973), chapter 9.
 *
 * @param slope median slope, in y per x
 * @param low lower end of the 95 % interval
 * @param high upper end
 * @param n number of points used
 */
public record TheilSen(double slope, double low, double high, int n) {

    static final int MOST_POINTS = 1000;

    /**
     * Slope through points.
     *
     * @return no answer for fewer than three points, numbers that are not finite, or x all equal
     * @throws IllegalArgumentException when the arrays differ in length
     */
    public static Answer<TheilSen> of(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("points need as many x as y, got " + x.length + " and " + y.length);
        }
        if (!Ranks.allFinite(x) || !Ranks.allFinite(y)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        if (x.length < 3) {
            return new Withheld<>(Reason.TOO_FEW);
        }
        double[] slopes = slopes(some(x), some(y));
        return slopes.length == 0 ? new Withheld<>(Reason.ALL_EQUAL) : new Given<>(between(slopes, some(x), some(y)));
    }

    private static double[] some(double[] all) {
        return all.length <= MOST_POINTS
                ? all
                : IntStream.range(0, MOST_POINTS)
                        .mapToDouble(i -> all[(int) ((long) i * all.length / MOST_POINTS)])
                        .toArray();
    }

    private static double[] slopes(double[] x, double[] y) {
        double[] slopes = new double[x.length * (x.length - 1) / 2];
        int found = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    slopes[found++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        double[] all = Arrays.copyOf(slopes, found);
        Arrays.sort(all);
        return all;
    }

    private static TheilSen between(double[] slopes, double[] x, double[] y) {
        int count = slopes.length;
        double slope = (slopes[(count - 1) / 2] + slopes[count / 2]) / 2;
        double half = new NormalDistribution().inverseCumulativeProbability(0.975) * Math.sqrt(variance(x, y));
        int low = (int) Math.max(0, Math.rint((count - half) / 2) - 1);
        int high = (int) Math.min(count - 1, Math.rint((count + half) / 2));
        return new TheilSen(slope, slopes[low], slopes[high], x.length);
    }

    /** Of Kendall's S, less what ties take away. */
    private static double variance(double[] x, double[] y) {
        return (pairs(x.length) - ties(x) - ties(y)) / 18;
    }

    private static double ties(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double sum = 0;
        for (int start = 0, end; start < sorted.length; start = end) {
            end = start;
            while (end < sorted.length && sorted[end] == sorted[start]) {
                end++;
            }
            sum += pairs(end - start);
        }
        return sum;
    }

    private static double pairs(double n) {
        return n * (n - 1) * (2 * n + 5);
    }
}
