package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A light station with its readings, oldest first.
 *
 * @param staleAfterMinutes age at which a last reading of this kind of lamp no longer says much
 * @param grids how even its light is, oldest first
 */
public record StationAnswer(
        UUID id,
        UUID labDayId,
        String name,
        String lamp,
        String instrument,
        @Nullable Double distanceM,
        @Nullable Double angleDeg,
        int staleAfterMinutes,
        List<IrradianceAnswer> readings,
        List<GridAnswer> grids) {}
