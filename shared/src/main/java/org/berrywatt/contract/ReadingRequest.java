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
 * @param points rows of a sweep, 5 to 60; of toggles, 6 to 20 with one number each, covered and open in turn, covered first
 * @param unusualConfirmed the person ticked that an unusual number is what the meter showed
 */
public record ReadingRequest(
        UUID cellId,
        String kind,
        @Nullable UUID stationId,
        @Nullable Typed voltage,
        @Nullable Typed current,
        @Nullable List<SweepPoint> points,
        boolean unusualConfirmed,
        @Nullable UUID replaces,
        Instant noticedAt) {}
