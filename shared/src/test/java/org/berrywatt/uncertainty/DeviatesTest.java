package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class DeviatesTest {
    private static final double KNOWN = Double.POSITIVE_INFINITY;

    private final Deviates deviates = new Deviates(7, 10_000);

    @Test
    void givesAStreamTheSameDrawsWhateverWasAskedForBefore() {
        Deviates again = new Deviates(7, 10_000);
        double[] late = again.of("b", Shape.NORMAL, KNOWN);
        deviates.of("a", Shape.NORMAL, KNOWN);
        deviates.of("c", Shape.STUDENT, 3);
        assertThat(deviates.of("b", Shape.NORMAL, KNOWN)).isEqualTo(late);
    }

    @Test
    void keepsDrawsWhenAStreamWasForgotten() {
        double[] first = deviates.of("station", Shape.NORMAL, KNOWN).clone();
        for (int i = 0; i < 150; i++) {
            deviates.of("other " + i, Shape.NORMAL, KNOWN);
        }
        assertThat(deviates.of("station", Shape.NORMAL, KNOWN)).isEqualTo(first);
    }

    /** Standard deviation of a correlation coefficient of 10,000 independent pairs: 0.01. */
    @Test
    void drawsDifferentNamesAndSeedsIndependently() {
        double[] a = deviates.of("cell 1", Shape.NORMAL, KNOWN);
        double[] b = deviates.of("cell 2", Shape.NORMAL, KNOWN);
        double[] c = new Deviates(8, 10_000).of("cell 1", Shape.NORMAL, KNOWN);
        assertThat(new PearsonsCorrelation().correlation(a, b)).isCloseTo(0, within(0.04));
        assertThat(new PearsonsCorrelation().correlation(a, c)).isCloseTo(0, within(0.04));
    }

    @Test
    void refusesToDrawNothing() {
        assertThatThrownBy(() -> new Deviates(1, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("trials must lie in [1, infinity), not 0");
    }
}
