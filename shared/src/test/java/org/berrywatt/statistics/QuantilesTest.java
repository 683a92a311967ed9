package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuantilesTest {

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2: resistivity by twelve gauges (from memory). */
    private static final double[] GAUGES = {
        95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682
    };

    @Test
    void interpolatesBetweenNeighbours() {
        // position 1 + 0.9 * 11 = 10.9: between the 10th, 95.1937, and the 11th, 95.1959, worked by hand
        assertThat(Quantiles.quantile(0.9, GAUGES)).hasValueCloseTo(95.19568, within(1e-10));
    }

    @Test
    void takesMiddleNumberOrMeanOfTwo() {
        // worked by hand
        assertThat(Quantiles.median(3, 1, 2)).hasValue(2);
        assertThat(Quantiles.median(4, 1, 2, 3)).hasValue(2.5);
        assertThat(Quantiles.median(7)).hasValue(7);
    }

    @Test
    void endsAtLeastAndGreatestNumber() {
        assertThat(Quantiles.quantile(0, GAUGES)).hasValue(95.0610);
        assertThat(Quantiles.quantile(1, GAUGES)).hasValue(95.1990);
    }

    @Test
    void isEmptyWithoutFiniteNumbers() {
        assertThat(Quantiles.median()).isEmpty();
        assertThat(Quantiles.median(1, Double.NaN)).isEmpty();
        assertThat(Quantiles.median(1, Double.POSITIVE_INFINITY)).isEmpty();
    }

    @Test
    void refusesShareOutsideUnitInterval() {
        assertThatThrownBy(() -> Quantiles.quantile(Double.NaN, 1, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("share must lie in [0, 1], got NaN");
    }
}
