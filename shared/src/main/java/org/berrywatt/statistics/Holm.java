package org.berrywatt.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Holm's step-down correction: with p in rising order, the adjusted p of the i-th is the largest (m - j + 1) p_j over j up
 * to i, at most 1. The chance to call any of m true null hypotheses false at level a is then at most a, however the tests
 * depend on each other. Source: S. Holm, Scandinavian Journal of Statistics 6 (1979) 65-70.
 */
public final class Holm {

    private Holm() {}

    /**
     * Adjusted p in the order given.
     *
     * @param p each in [0, 1]
     * @throws IllegalArgumentException when one is not
     */
    public static double[] adjust(double... p) {
        List<Integer> rising = IntStream.range(0, p.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> checked(p[i])))
                .toList();
        double[] adjusted = new double[p.length];
        double reached = 0;
        for (int place = 0; place < p.length; place++) {
            int test = rising.get(place);
            reached = Math.max(reached, Math.min(1, (p.length - place) * p[test]));
            adjusted[test] = reached;
        }
        return adjusted;
    }

    private static double checked(double p) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("p must lie in [0, 1], got " + p);
        }
        return p;
    }
}
