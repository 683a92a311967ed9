package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CorrelationTest {

    @Test
    void refusesCoefficientOutsideItsRange() {
        assertThatThrownBy(() -> Correlation.of(new double[][] {{1, 1.2}, {1.2, 1}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a correlation coefficient lies in [-1, 1], not 1.2");
        assertThatThrownBy(() -> Correlation.of(new double[][] {{1, Double.NaN}, {Double.NaN, 1}}))
                .hasMessage("a correlation coefficient lies in [-1, 1], not NaN");
    }

    @Test
    void refusesMatrixThatIsNotSymmetricWithOnes() {
        assertThatThrownBy(() -> Correlation.of(new double[][] {{1, 0.5}, {0.4, 1}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("symmetric with ones on the diagonal");
        assertThatThrownBy(() -> Correlation.of(new double[][] {{0.9}})).hasMessageContaining("ones on the diagonal");
        assertThatThrownBy(() -> Correlation.of(new double[][] {{1, 0}})).hasMessageContaining("square");
    }

    /** Three quantities cannot each be opposed to both others: 1 + 2 (-0.9) is below 0. */
    @Test
    void refusesWhatNoQuantitiesCanBe() {
        double[][] opposed = {{1, -0.9, -0.9}, {-0.9, 1, -0.9}, {-0.9, -0.9, 1}};
        assertThatThrownBy(() -> Correlation.of(opposed))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("no quantities can be correlated so");
    }

    @Test
    void refusesReadingsThatDoNotDiffer() {
        assertThatThrownBy(() -> Correlation.ofReadings(new double[] {1, 1, 1}, new double[] {1, 2, 3}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
