package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Printed digits of JCGM 101:2008 (published results from memory; exact ones in the files of the test resources). */
class SupplementOneTest {

    @Test
    void printsTheIntervalOfFourNormalInputs() {
        // 9.2.2: 3.92; exact 1.96 · 2 = 3.919928
        assertThat(TenRuns.halfInterval(i -> Input.normal("x" + i, 0, "1", 1))).isCloseTo(3.92, within(0.005));
    }

    @Test
    void printsTheIntervalOfFourRectangularInputs() {
        // 9.2.3: 3.88; exact by the distribution of a sum of rectangles 3.879407. Symmetric and shortest interval are
        // the
        // same there, since the density is symmetric with one peak
        assertThat(TenRuns.halfInterval(i -> Input.rectangular("x" + i, 0, "1", Math.sqrt(3))))
                .isCloseTo(3.88, within(0.005));
    }

    @Test
    void findsTheUncertaintyOfTheWeightThatThePrintedRunMissedByItsStandardError() {
        // 9.3: printed 0.0754, exact by quadrature 0.0754797, which rounds to 0.0755. The printed figure was drawn in
        // some
        // 700 000 trials, whose standard error u/√(2 M) is 0.00006 or a little more: it lies 1.3 of them off
        assertThat(TenRuns.massUncertaintyMg()).isCloseTo(0.0754797, within(3 * 0.00002));
    }
}
