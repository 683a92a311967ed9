package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.List;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Wilcoxon's rank sum (Mann-Whitney) test of two groups, with Hodges and Lehmann's shift: the median of all differences.
 *
 * <p>p is that of {@link KruskalWallis} for two groups: exact while all deals can be looked at, chi-squared beyond. The
 * interval of the shift takes the C-th difference from either end, where C is the 2.5 % quantile of U without ties, exact
 * up to {@value #EXACT_UP_TO} pairs and normal beyond. Source: M. Hollander and D. A. Wolfe, Nonparametric Statistical
 * Methods (1973), chapter 4.
 *
 * @param u pairs in which the first group's value is larger, ties half, in [0, mn]
 * @param p two-sided, in (0, 1]
 * @param shift first less second group
 * @param low lower end of the 95 % interval of the shift; the least difference where so few values cannot reach 95 %
 * @param high upper end
 * @param evaluation how p was found
 */
public record MannWhitney(double u, double p, double shift, double low, double high, Evaluation evaluation) {

    private static final int EXACT_UP_TO = 2_500;
    private static final int MOST_PAIRS = 1_000_000;

    /** Compares two groups; no answer for the reasons of {@link KruskalWallis#of}, nor for more than a million pairs. */
    public static Answer<MannWhitney> of(double[] first, double[] second) {
        if ((long) first.length * second.length > MOST_PAIRS) {
            return new Withheld<>(Reason.TOO_MANY);
        }
        Answer<KruskalWallis> test = KruskalWallis.of(List.of(first, second));
        return test instanceof Withheld<KruskalWallis> none
                ? new Withheld<>(none.reason())
                : new Given<>(compare(first, second, test.value().orElseThrow()));
    }

    private static MannWhitney compare(double[] first, double[] second, KruskalWallis test) {
        double[] differences = differences(first, second);
        int pairs = differences.length;
        int cut = Math.max(1, quantile(first.length, second.length));
        return new MannWhitney(
                u(differences),
                test.p(),
                (differences[(pairs - 1) / 2] + differences[pairs / 2]) / 2,
                differences[cut - 1],
                differences[pairs - cut],
                test.evaluation());
    }

    private static double[] differences(double[] first, double[] second) {
        double[] differences = new double[first.length * second.length];
        for (int i = 0; i < first.length; i++) {
            for (int j = 0; j < second.length; j++) {
                differences[i * second.length + j] = first[i] - second[j];
            }
        }
        Arrays.sort(differences);
        return differences;
    }

    private static double u(double[] differences) {
        return Arrays.stream(differences)
                .map(difference -> (Math.signum(difference) + 1) / 2)
                .sum();
    }

    /** The least u whose cumulative chance reaches 2.5 %. */
    private static int quantile(int m, int n) {
        if ((long) m * n > EXACT_UP_TO) {
            double z = new NormalDistribution().inverseCumulativeProbability(0.025);
            return (int) Math.floor(m * n / 2.0 + z * Math.sqrt(m * (double) n * (m + n + 1) / 12));
        }
        double[] chance = chances(m, n);
        double cumulative = chance[0];
        int u = 0;
        while (cumulative < 0.025) {
            cumulative += chance[++u];
        }
        return u;
    }

    /** Of U without ties: multiply by (1 - q^(n+i)) and divide by (1 - q^i), the Gaussian binomial coefficient. */
    private static double[] chances(int m, int n) {
        double[] counts = new double[m * n + 1];
        counts[0] = 1;
        for (int i = 1; i <= m; i++) {
            for (int u = m * n; u >= n + i; u--) {
                counts[u] -= counts[u - n - i];
            }
            for (int u = i; u <= m * n; u++) {
                counts[u] += counts[u - i];
            }
        }
        double all = Arrays.stream(counts).sum();
        return Arrays.stream(counts).map(count -> count / all).toArray();
    }
}
