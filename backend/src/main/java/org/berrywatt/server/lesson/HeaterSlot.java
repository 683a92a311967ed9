package org.berrywatt.server.lesson;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cell's stay on a heater as later features see it.
 *
 * @param targetDegC in [50, 650] degC
 * @param holdMinutes minutes on the heater, warming up included, in [1, 480]
 * @param outAt null while it is on the heater
 */
public record HeaterSlot(
        UUID id,
        UUID cellId,
        String heater,
        int position,
        double targetDegC,
        int holdMinutes,
        Instant inAt,
        @Nullable Instant outAt) {

    /** Half an hour off the heater. Common practice, no source; hot glass looks cold, so check before touching anyway. */
    public static final Duration COOL_DOWN = Duration.ofMinutes(30);

    public Instant holdUntil() {
        return inAt.plus(Duration.ofMinutes(holdMinutes));
    }

    /** When it may be touched after a check; null while it is on the heater, since nobody knows when that was switched off. */
    public @Nullable Instant coolUntil() {
        return outAt == null ? null : outAt.plus(COOL_DOWN);
    }

    public HeatState state(Instant now) {
        var cool = coolUntil();
        if (cool == null) {
            return now.isBefore(holdUntil()) ? HeatState.HEATING : HeatState.HOLD_OVER;
        }
        return now.isBefore(cool) ? HeatState.COOLING : HeatState.TOUCHABLE;
    }
}
