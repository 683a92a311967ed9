package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A light station with its readings, oldest first.
 *
 * @param settings how it was set up and every correction, oldest first; the last ones hold
 * @param spectra of its own lamp, oldest first; the last one holds
 * @param staleAfterMinutes age at which a last reading of this kind of lamp no longer says much
 * @param grids how even its light is, oldest first
 * @param dyes what its newest reading is to each dye family; empty while nobody read it
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
        List<StationSettings> settings,
        List<SpectrumAnswer> spectra,
        List<IrradianceAnswer> readings,
        List<GridAnswer> grids,
        List<DyeLight> dyes) {

    /**
     * The light as cells of one dye see it.
     *
     * @param dye key of the dye family, for example {@code "anthocyanin"}
     * @param effectiveIrradianceWm2 the sunlight in which such a cell would give the same current
     */
    public record DyeLight(String dye, Figure effectiveIrradianceWm2) {}
}
