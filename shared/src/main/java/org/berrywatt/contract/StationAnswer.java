package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A light station with its readings, oldest first. */
public record StationAnswer(
        UUID id,
        UUID labDayId,
        String name,
        String lamp,
        String instrument,
        @Nullable Double distanceM,
        @Nullable Double angleDeg,
        List<IrradianceAnswer> readings) {}
