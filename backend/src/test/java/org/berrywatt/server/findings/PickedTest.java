package org.berrywatt.server.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PickedTest {

    @Test
    void takesAllOfFew() {
        assertThat(Picked.of(7, 10)).containsExactly(0, 1, 2, 3, 4, 5, 6);
        assertThat(Picked.of(0, 10)).isEmpty();
    }

    @Test
    void takesEachOnceAndInOrder() {
        assertThat(Picked.of(2_001, 2_000))
                .hasSize(2_000)
                .doesNotHaveDuplicates()
                .isSorted();
        assertThat(Picked.of(99_999, 2_000))
                .hasSize(2_000)
                .doesNotHaveDuplicates()
                .isSorted();
    }

    /** A third, a thirtieth: a rhythm of the file is none of the picture. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 30})
    void followsNoRhythmOfTheFile(int period) {
        var first = IntStream.of(Picked.of(60_000, 2_000).toArray())
                .filter(i -> i % period == 0)
                .count();
        assertThat((double) first / 2_000).isCloseTo(1.0 / period, within(0.05));
    }
}
