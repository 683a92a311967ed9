package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class IntervalTest {

    @Test
    void holdsItsEnds() {
        Interval interval = new Interval(1, 3);
        assertThat(interval.contains(1)).isTrue();
        assertThat(interval.contains(3)).isTrue();
        assertThat(interval.contains(3.01)).isFalse();
        assertThat(interval.contains(Double.NaN)).isFalse();
        assertThat(interval.width()).isEqualTo(2);
    }

    @Test
    void swapsEndsUnderANegativeFactor() {
        assertThat(new Interval(1, 3).times(-2)).isEqualTo(new Interval(-6, -2));
    }

    @Test
    void refusesEndsOutOfOrderOrNotFinite() {
        assertThatThrownBy(() -> new Interval(2, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an interval needs finite ends in order, not [2.0, 1.0]");
        assertThatThrownBy(() -> new Interval(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Interval(0, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
