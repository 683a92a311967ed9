package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Put in at noon for 50 minutes; half an hour of cooling is common practice, no source. */
class HeaterSlotTest {

    @Test
    void heatsUntilItsTimeIsOver() {
        assertThat(stay(null).state(at("12:49:59"))).isEqualTo(HeatState.HEATING);
    }

    @Test
    void isOverFromTheMomentItsTimeEnds() {
        assertThat(stay(null).state(at("12:50:00"))).isEqualTo(HeatState.HOLD_OVER);
    }

    @Test
    void isNeverTouchableWhileItIsOnTheHeater() {
        assertThat(stay(null).state(at("23:59:59"))).isEqualTo(HeatState.HOLD_OVER);
        assertThat(stay(null).coolUntil()).isNull();
    }

    @Test
    void coolsForHalfAnHourAfterItIsTakenOut() {
        assertThat(stay(at("13:00:00")).state(at("13:29:59"))).isEqualTo(HeatState.COOLING);
        assertThat(stay(at("13:00:00")).state(at("13:30:00"))).isEqualTo(HeatState.TOUCHABLE);
    }

    @Test
    void coolsAlsoWhenItIsTakenOutEarly() {
        assertThat(stay(at("12:10:00")).state(at("12:20:00"))).isEqualTo(HeatState.COOLING);
    }

    private static HeaterSlot stay(@Nullable Instant outAt) {
        return new HeaterSlot(UUID.randomUUID(), UUID.randomUUID(), "Plate A", 1, 450, 50, at("12:00:00"), outAt);
    }

    private static Instant at(String time) {
        return Instant.parse("2026-11-25T" + time + "Z");
    }
}
