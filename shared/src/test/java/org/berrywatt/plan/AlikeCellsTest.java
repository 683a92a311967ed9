package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class AlikeCellsTest {

    /**
     * Residual standard deviation of one-way analysis of variance on the logarithms of three groups: by hand, groups of
     * logarithms {0, 2}, {1, 1} and {5} have squares of 2 on 2 degrees of freedom, a standard deviation of 1.
     */
    @Test
    void poolsTheSpreadWithinGroups() {
        var alike = AlikeCells.of(List.of(List.of(1.0, Math.exp(2)), List.of(Math.E, Math.E), List.of(Math.exp(5))));

        assertThat(alike.spread()).isCloseTo(Math.E, within(1e-12));
        assertThat(alike.degreesOfFreedom()).isEqualTo(2);
        assertThat(alike.enough()).isFalse();
    }

    @Test
    void tellsNothingWithoutCellsMadeAlike() {
        assertThat(AlikeCells.of(List.of(List.of(2.0), List.of())).enough()).isFalse();
    }
}
