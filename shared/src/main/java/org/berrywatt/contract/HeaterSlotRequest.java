package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cell is put on a position of a heater, or such an entry is corrected.
 *
 * @param heater name of the heater or plate, one line of 1 to 24 characters
 * @param position in [1, 24]
 * @param target temperature in [50, 650] degC
 * @param holdMinutes minutes on the heater, warming up included, in [1, 480]
 * @param inAt when it was put in, by the server's clock as the phone knows it; null for now, or, in a correction, for the
 *     time of what it replaces. A time in the future is taken for now.
 * @param replaces the entry that this one corrects
 * @param note why a teacher puts it on for a team that is not signed off; at most 200 characters
 */
public record HeaterSlotRequest(
        UUID cellId,
        String heater,
        int position,
        Typed target,
        int holdMinutes,
        @Nullable Instant inAt,
        @Nullable UUID replaces,
        @Nullable String note) {}
