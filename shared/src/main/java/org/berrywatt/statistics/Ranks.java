package org.berrywatt.statistics;

import java.util.Arrays;
import org.hipparchus.stat.ranking.NaturalRanking;
import org.hipparchus.stat.ranking.TiesStrategy;

/**
 * Mid-ranks of a sample: the smallest number has rank 1, equal numbers share the mean of their ranks. Kept doubled, since
 * twice a mid-rank is a whole number and sums of whole numbers compare exactly.
 */
final class Ranks {

    private final long[] doubled;

    private Ranks(long[] doubled) {
        this.doubled = doubled;
    }

    /** Ranks of finite numbers. */
    static Ranks of(double[] values) {
        // the library ranks no empty sample
        double[] ranks = values.length == 0 ? values : new NaturalRanking(TiesStrategy.AVERAGE).rank(values);
        return new Ranks(
                Arrays.stream(ranks).mapToLong(rank -> Math.round(2 * rank)).toArray());
    }

    static boolean allFinite(double[] values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                return false;
            }
        }
        return true;
    }

    int size() {
        return doubled.length;
    }

    long doubled(int index) {
        return doubled[index];
    }

    long[] doubled() {
        return doubled.clone();
    }

    /** Four times the sum of squared deviations of the ranks from their mean; 0 when all numbers are equal. */
    long spread() {
        long mean = size() + 1L;
        return Arrays.stream(doubled).map(rank -> (rank - mean) * (rank - mean)).sum();
    }
}
