package org.berrywatt.leaderboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrialsTest {

    @Test
    void countsADrawBelowNothingAsNothing() {
        assertThat(Trials.atLeastNothing(new double[] {-0.76, 0, 0.4})).isEqualTo(Trials.of(new double[] {0, 0, 0.4}));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void refusesADrawThatIsNoNumber(double draw) {
        assertThatThrownBy(() -> Trials.atLeastNothing(new double[] {draw}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a trial of a result lies in [0, infinity), not " + draw);
    }
}
