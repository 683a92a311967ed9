package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A recorded grid of readings of a station's light; the latest one counts.
 *
 * @param readings row by row
 * @param columns places in a row
 * @param nonUniformity (max - min)/(max + min), in [0, 1)
 * @param grade class of the lamp standard: {@code "A+"}, {@code "A"}, {@code "B"}, {@code "C"} or {@code "none"}
 */
public record GridAnswer(
        UUID id,
        UUID stationId,
        List<Typed> readings,
        int columns,
        double nonUniformity,
        String grade,
        Instant acceptedAt) {}
