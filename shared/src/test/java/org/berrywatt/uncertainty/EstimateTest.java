package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EstimateTest {

    /** JCGM 100:2008, table G.1: k = 1.960 for 95 %. */
    @Test
    void spansNinetyFivePercent() {
        Estimate estimate = new Estimate(10, 1);
        assertThat(estimate.low()).isCloseTo(8.040, within(5e-4));
        assertThat(estimate.high()).isCloseTo(11.960, within(5e-4));
    }

    /** JCGM 100:2008, 5.1.2: for a difference of independent quantities the variances add; 3, 4, 5. */
    @Test
    void addsVariancesInADifference() {
        Estimate difference = new Estimate(7, 3).minus(new Estimate(5, 4));
        assertThat(difference).isEqualTo(new Estimate(2, 5));
    }

    @Test
    void keepsRelativeUncertaintyWhenScaled() {
        assertThat(new Estimate(8, 2).times(-0.5)).isEqualTo(new Estimate(-4, 1));
        assertThat(new Estimate(-4, 1).relativeUncertainty()).isEqualTo(0.25);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1, -Double.MIN_VALUE})
    void refusesUncertaintyOutsideItsRange(double uncertainty) {
        assertThatThrownBy(() -> new Estimate(1, uncertainty))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a standard uncertainty lies in [0, infinity), not " + uncertainty);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesValueThatIsNotFinite(double value) {
        assertThatThrownBy(() -> new Estimate(value, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an estimate must be finite, not " + value);
    }
}
