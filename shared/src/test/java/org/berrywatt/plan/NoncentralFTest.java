package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoncentralFTest {

    /**
     * The noncentral beta distribution of the Boost.Math library's test data (test/ncbeta.ipp, computed at 40 digits; Boost
     * Software License; numbers are facts): shapes a and b, noncentrality, x, chance. F = (b/a) x/(1 - x) on 2a and 2b
     * degrees of freedom. Columns a, b and x are given to 17 digits.
     */
    @ParameterizedTest
    @CsvSource({
        "1.4543050527572632, 0.14543050527572632, 59.405887603759766, 0.99760663509368896, 2.759834870217354705e-1",
        "1.4543050527572632, 1.0907287597656250,  72.258796691894531, 0.99422317743301392, 8.372920335940658619e-1",
        "1.4543050527572632, 1.4397619962692261,  7.1423358917236328, 0.18957026302814484, 8.246187378326890921e-3",
        "1.4543050527572632, 1.4544504880905151,  22.492902755737305, 0.80233430862426758, 1.444816643582166350e-1",
        "1.4543050527572632, 1.5997356176376343,  109.37629699707031, 0.97184079885482788, 3.954357512869885630e-1",
        "1.4543050527572632, 2.9086101055145264,  186.79864501953125, 0.97268849611282349, 4.850256268066020087e-1",
    })
    void agreesWithPublishedValues(double a, double b, double lambda, double x, double chance) {
        double f = b / a * x / (1 - x);

        assertThat(NoncentralF.cumulative(f, 2 * a, 2 * b, lambda)).isCloseTo(chance, within(1e-11));
    }

    /** Upper 5 % point of F on 3 and 20 degrees of freedom: 3.10 in every table. */
    @Test
    void isTheCommonFDistributionWithoutAnEffect() {
        assertThat(NoncentralF.cumulative(3.10, 3, 20, 0)).isCloseTo(0.95, within(5e-4));
    }
}
