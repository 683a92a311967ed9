package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareDrawsTest {
    private static final Deviates DEVIATES = new Deviates(3, 40_000);

    /** Quantiles of Beta(k + 1/2, n - k + 1/2) by SciPy 1.17, beta.ppf; 40,000 draws know them to about 0.004. */
    @ParameterizedTest
    @CsvSource({
        "2, 3, 0.17674, 0.64755, 0.96125",
        "3, 3, 0.46442, 0.93262, 0.99985",
        "0, 3, 0.00015, 0.06738, 0.53558",
        "5, 12, 0.18048, 0.41902, 0.68806"
    })
    void hasTheQuantilesOfTheBetaDistribution(int seen, int of, double low, double median, double high) {
        var sample = Sample.of(ShareDraws.of(seen, of, DEVIATES, "team"));
        assertThat(sample.symmetricInterval(0.95).low()).isCloseTo(low, within(0.012));
        assertThat(sample.median()).isCloseTo(median, within(0.012));
        assertThat(sample.symmetricInterval(0.95).high()).isCloseTo(high, within(0.012));
    }

    @Test
    void drawsTheSameForTheSameNameOnly() {
        var draws = ShareDraws.of(2, 3, DEVIATES, "team");
        assertThat(ShareDraws.of(2, 3, DEVIATES, "team")).isEqualTo(draws);
        assertThat(ShareDraws.of(2, 3, DEVIATES, "other")).isNotEqualTo(draws);
    }

    @Test
    void refusesMoreThanThereAre() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShareDraws.of(4, 3, DEVIATES, "team"))
                .withMessageContaining("k in [0, n], not 4 of 3");
        assertThatIllegalArgumentException().isThrownBy(() -> ShareDraws.of(0, 0, DEVIATES, "team"));
    }
}
