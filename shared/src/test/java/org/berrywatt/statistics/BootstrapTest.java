package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class BootstrapTest {

    @Test
    void agreesWithPublishedIntervalOfACorrelation() throws IOException {
        // B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap (1993): 15 law schools
        Published schools = Published.file("bootstrap_law_school.json");
        double[] lsat = schools.data("lsat");
        double[] gpa = schools.data("gpa");
        Bootstrap found = Bootstrap.bca(15, at -> correlation(lsat, gpa, at), 0.95, draws(20_000))
                .orElseThrow();
        assertThat(found.acceleration())
                .isCloseTo(schools.at("exact", "jackknife_acceleration").asDouble(), within(1e-13));
        // spread of a run of 20,000: sqrt(1e6/20000) = 7.07 times that given; four of them
        near(schools, "z0", found.bias());
        near(schools, "bca95_lower", found.low());
        near(schools, "bca95_upper", found.high());
    }

    private static void near(Published schools, String name, double found) {
        double spread = schools.at("monte_carlo", name, "spread_of_runs_sd").asDouble();
        assertThat(found)
                .as(name)
                .isCloseTo(schools.at("monte_carlo", name, "value").asDouble(), within(4 * 7.07 * spread));
    }

    @Test
    void hasNoIntervalWithoutDrawsOrSpread() {
        assertThat(Bootstrap.bca(5, at -> at[0], 0.95, Resampling.none())).isEmpty();
        assertThat(Bootstrap.bca(5, at -> 1, 0.95, draws(100))).isEmpty();
    }

    @Test
    void endsWhenTheWatcherSaysSo() {
        Resampling cancelled = new Resampling(10_000, 1, done -> {
            throw new CancellationException("enough");
        });
        assertThatThrownBy(() -> Bootstrap.bca(5, at -> at[0], 0.95, cancelled))
                .isInstanceOf(CancellationException.class);
    }

    private static Resampling draws(int draws) {
        return new Resampling(draws, 1, done -> {});
    }

    private static double correlation(double[] x, double[] y, int[] at) {
        double meanX = 0;
        double meanY = 0;
        for (int i : at) {
            meanX += x[i] / at.length;
            meanY += y[i] / at.length;
        }
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int i : at) {
            xy += (x[i] - meanX) * (y[i] - meanY);
            xx += (x[i] - meanX) * (x[i] - meanX);
            yy += (y[i] - meanY) * (y[i] - meanY);
        }
        return xy / Math.sqrt(xx * yy);
    }
}
