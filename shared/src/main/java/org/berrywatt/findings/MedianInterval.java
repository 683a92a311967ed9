package org.berrywatt.findings;

import java.util.Arrays;
import java.util.Optional;
import org.berrywatt.statistics.Bootstrap;
import org.berrywatt.statistics.Quantiles;
import org.berrywatt.statistics.Resampling;

/**
 * 95 % interval of a median: BCa bootstrap from {@value #FEWEST} values on, and without draws the values at ranks n/2 ± 0.98
 * sqrt(n), from {@value #MANY} values on. Below {@value #FEWEST} no two values of a sample hold 95 %. Source of the latter: W.
 * J. Conover, Practical Nonparametric Statistics (1999), section 3.2.
 */
public record MedianInterval(double low, double high) {

    private static final int FEWEST = 6;
    private static final int MANY = 200;
    private static final int DRAWS = 1_999;

    static Optional<MedianInterval> of(double[] values, Resampling resampling) {
        if (values.length >= MANY) {
            return Optional.of(byRanks(values));
        }
        if (values.length < FEWEST || resampling.draws() == 0) {
            return Optional.empty();
        }
        Resampling draws = new Resampling(DRAWS, resampling.seed(), resampling.watch());
        return Bootstrap.bca(values.length, at -> median(values, at), 0.95, draws)
                .map(interval -> new MedianInterval(interval.low(), interval.high()));
    }

    private static double median(double[] values, int[] at) {
        double[] drawn = new double[at.length];
        Arrays.setAll(drawn, i -> values[at[i]]);
        Arrays.sort(drawn);
        return (drawn[(drawn.length - 1) / 2] + drawn[drawn.length / 2]) / 2;
    }

    private static MedianInterval byRanks(double[] values) {
        double half = 0.98 / Math.sqrt(values.length);
        return new MedianInterval(
                Quantiles.quantile(0.5 - half, values).orElseThrow(),
                Quantiles.quantile(0.5 + half, values).orElseThrow());
    }
}
