package org.berrywatt.statistics;

import java.util.Arrays;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.hipparchus.util.CombinatoricsUtils;

/**
 * Fisher's exact test of a table with two columns (worked, failed): do the rows share one rate?
 *
 * <p>p is the chance of all tables with the same margins that are no likelier than the one found. Beyond
 * {@value #MOST_TABLES} tables Pearson's chi-squared stands in. Source: R. A. Fisher, The Design of Experiments (1935),
 * chapter 2; extension to more rows by G. H. Freeman and J. H. Halton, Biometrika 38 (1951) 141-149.
 *
 * @param p two-sided, in (0, 1]
 * @param n counts in the table
 */
public record FisherExact(double p, int n, Evaluation evaluation) {

    private static final int MOST_TABLES = 1_000_000;

    /**
     * Tests a table; rows without counts are passed over.
     *
     * @param successes of each row, each in [0, total]
     * @param totals of each row
     * @return no answer for fewer than two rows, or when all or none succeed
     * @throws IllegalArgumentException when the arrays differ in length or a success lies outside [0, total]
     */
    public static Answer<FisherExact> of(int[] successes, int[] totals) {
        requireCounts(successes, totals);
        int worked = Arrays.stream(successes).sum();
        int n = Arrays.stream(totals).sum();
        long rows = Arrays.stream(totals).filter(total -> total > 0).count();
        if (rows < 2) {
            return new Withheld<>(Reason.ONE_GROUP);
        }
        return worked == 0 || worked == n
                ? new Withheld<>(Reason.ALL_EQUAL)
                : new Given<>(test(successes, totals, worked, n));
    }

    private static void requireCounts(int[] successes, int[] totals) {
        if (successes.length != totals.length) {
            throw new IllegalArgumentException(
                    "a table needs as many successes as totals, got " + successes.length + " and " + totals.length);
        }
        for (int row = 0; row < totals.length; row++) {
            if (successes[row] < 0 || successes[row] > totals[row]) {
                throw new IllegalArgumentException(
                        "successes must lie in [0, total], got " + successes[row] + " of " + totals[row]);
            }
        }
    }

    private static FisherExact test(int[] successes, int[] totals, int worked, int n) {
        double tables = 1;
        for (int total : totals) {
            tables *= Math.min(total, worked) + 1.0;
        }
        return tables <= MOST_TABLES
                ? new FisherExact(Math.min(1, new Tables(successes, totals, worked, n).tail()), n, Evaluation.EXACT)
                : new FisherExact(pearson(successes, totals, (double) worked / n), n, Evaluation.APPROXIMATE);
    }

    private static double pearson(int[] successes, int[] totals, double rate) {
        double chiSquared = 0;
        int rows = 0;
        for (int row = 0; row < totals.length; row++) {
            if (totals[row] > 0) {
                double off = successes[row] - totals[row] * rate;
                chiSquared += off * off / (totals[row] * rate * (1 - rate));
                rows++;
            }
        }
        return ChiSquared.beyond(rows - 1, chiSquared);
    }

    /** All tables with the given margins, by their log probabilities. */
    private static final class Tables {

        /** Tables as likely as the one found may differ in the last digits. */
        private static final double SAME = 1e-7;

        private final int[] totals;
        private final double[][] ways;
        private final double whole;
        private final double found;
        private final int worked;

        Tables(int[] successes, int[] totals, int worked, int n) {
            this.totals = totals;
            this.worked = worked;
            this.whole = logWays(n, worked);
            this.ways = new double[totals.length][];
            double log = -whole;
            for (int row = 0; row < totals.length; row++) {
                ways[row] = new double[Math.min(totals[row], worked) + 1];
                for (int k = 0; k < ways[row].length; k++) {
                    ways[row][k] = logWays(totals[row], k);
                }
                log += ways[row][successes[row]];
            }
            this.found = log;
        }

        /** By factorials: adding up logarithms would take as long as the number is large. */
        private static double logWays(int n, int k) {
            return CombinatoricsUtils.factorialLog(n)
                    - CombinatoricsUtils.factorialLog(k)
                    - CombinatoricsUtils.factorialLog(n - k);
        }

        double tail() {
            return tail(0, worked, -whole);
        }

        private double tail(int row, int left, double log) {
            if (row == totals.length) {
                return left == 0 && log <= found + SAME ? Math.exp(log) : 0;
            }
            double sum = 0;
            for (int k = 0; k < ways[row].length && k <= left; k++) {
                sum += tail(row + 1, left - k, log + ways[row][k]);
            }
            return sum;
        }
    }
}
