package org.berrywatt.statistics;

import java.util.Arrays;
import java.util.List;
import org.berrywatt.statistics.Answer.Given;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;

/**
 * Kruskal-Wallis test: do the groups' mean ranks differ more than chance would have it?
 *
 * <p>H = (N - 1) sum n_g (mean rank_g - (N + 1)/2)^2 / sum (rank - (N + 1)/2)^2, which holds the usual correction for
 * ties. While the observations can be dealt to the groups in at most {@value Deals#FEW} ways, p is the share of deals
 * with an H at least as large; beyond, H is taken as chi-squared. With two groups this is the two-sided Wilcoxon rank sum
 * (Mann-Whitney) test. Source: W. H. Kruskal and W. A. Wallis, Journal of the American Statistical Association 47 (1952)
 * 583-621.
 *
 * @param h the statistic, in [0, n - 1]
 * @param degreesOfFreedom groups that hold observations, less one
 * @param p in (0, 1]
 * @param n number of observations, 3 or more
 * @param evaluation how p was found
 */
public record KruskalWallis(double h, int degreesOfFreedom, double p, int n, Evaluation evaluation) {

    /**
     * Compares groups; empty groups are passed over.
     *
     * @return no answer for numbers that are not finite, fewer than three observations or two groups, or all numbers equal
     */
    public static Answer<KruskalWallis> of(List<double[]> groups) {
        List<double[]> filled =
                groups.stream().filter(group -> group.length > 0).toList();
        double[] pooled = filled.stream().flatMapToDouble(Arrays::stream).toArray();
        if (!Ranks.allFinite(pooled)) {
            return new Withheld<>(Reason.NOT_FINITE);
        }
        if (filled.size() < 2) {
            return new Withheld<>(Reason.ONE_GROUP);
        }
        return pooled.length < 3 ? new Withheld<>(Reason.TOO_FEW) : compare(filled, Ranks.of(pooled));
    }

    private static Answer<KruskalWallis> compare(List<double[]> groups, Ranks ranks) {
        if (ranks.spread() == 0) {
            return new Withheld<>(Reason.ALL_EQUAL);
        }
        Deals deals = new Deals(ranks, groups.stream().mapToInt(g -> g.length).toArray());
        double h = (ranks.size() - 1) * deals.dealtSpread() / ranks.spread();
        return new Given<>(
                deals.areFew()
                        ? new KruskalWallis(h, groups.size() - 1, deals.shareAsSpread(), ranks.size(), Evaluation.EXACT)
                        : approximate(h, groups.size() - 1, ranks.size()));
    }

    private static KruskalWallis approximate(double h, int degreesOfFreedom, int n) {
        // the upper tail itself: one minus the lower tail would lose every digit of a small p
        double p = ChiSquared.beyond(degreesOfFreedom, h);
        return new KruskalWallis(h, degreesOfFreedom, p, n, Evaluation.APPROXIMATE);
    }
}
