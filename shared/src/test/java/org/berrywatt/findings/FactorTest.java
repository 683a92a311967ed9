package org.berrywatt.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FactorTest {

    @Test
    void takesEveryNumberForALevelAndRoundsWhatConversionAdds() {
        Factor factor = Factor.ofNumbers("bake", Arrays.asList(450.0, 350.0000001, null, 350.0, -0.0));
        assertThat(factor.levels()).containsExactly("0", "350", "450");
        assertThat(factor.isRecorded(2)).isFalse();
        assertThat(factor.numberAt(1)).isEqualTo(350);
    }

    @Test
    void gathersManyNumbersIntoFourRanges() {
        List<Double> many = IntStream.range(0, 40).mapToObj(i -> (double) i).toList();
        int[] cells = IntStream.range(0, 40).toArray();
        assertThat(Factor.ofNumbers("time", List.copyOf(many)).groups(cells, 6))
                .containsOnly(0, 1, 2, 3)
                .startsWith(0, 0)
                .endsWith(3, 3);
    }

    @Test
    void refusesNumberThatIsNotFinite() {
        assertThatThrownBy(() -> Factor.ofNumbers("bake", List.of(Double.NaN)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("number must be finite, got NaN");
    }

    @Test
    void refusesCountingCellWithoutPerformance() {
        assertThatThrownBy(() -> new Subject("a", "t", "d", Standing.COUNTS, Double.NaN))
                .hasMessage("a cell that counts needs a performance in [0, infinity), got NaN");
        assertThatThrownBy(() -> new Subject("a", "t", "d", Standing.COUNTS, null))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
