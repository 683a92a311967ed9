package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a team read off its meter.
 *
 * @param kind {@code "dark"}: covered cell; {@code "light"}: open-circuit voltage and short-circuit current under a
 *     station's light; {@code "sweep"}: a load sweep under a station's light; {@code "toggles"}: a station's light opened and
 *     covered in turn
 * @param stationId needed for all but the dark check
 * @param swappedVoltage of the covered cell with the leads swapped; left out when it was read one way
 * @param swappedCurrent of the covered cell with the leads swapped; left out when it was read one way
 * @param points rows of a sweep, 5 to 60; of toggles, 6 to 20 with one number each, covered and open in turn, covered first
 * @param unusualConfirmed the person ticked that an unusual number, or an unlikely pair of swapped leads, is what the meter showed
 * @param replaces the reading that this one corrects; the correction counts for when that was read
 * @param reason why a reading is corrected, 1 to 120 characters; a corrected sweep needs one
 */
public record ReadingRequest(
        UUID cellId,
        String kind,
        @Nullable UUID stationId,
        @Nullable Typed voltage,
        @Nullable Typed current,
        @Nullable Typed swappedVoltage,
        @Nullable Typed swappedCurrent,
        @Nullable List<SweepPoint> points,
        boolean unusualConfirmed,
        @Nullable UUID replaces,
        @Nullable String reason,
        Instant noticedAt) {}
