package org.berrywatt.findings;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ObservationTest {

    @Test
    void refusesCountingCellWithoutFinitePower() {
        assertThatThrownBy(() -> new Observation("a", "elder", null, Standing.COUNTS, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a cell that counts needs a finite power density, got NaN");
        assertThatThrownBy(() -> new Observation("a", "elder", null, Standing.COUNTS, null))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesNumberThatIsNotFinite() {
        assertThatThrownBy(() -> new Observation("a", "450", Double.NaN, Standing.FAILED, null))
                .hasMessage("number must be finite, got NaN");
    }
}
