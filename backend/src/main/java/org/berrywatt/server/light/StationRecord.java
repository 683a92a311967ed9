package org.berrywatt.server.light;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.light.OwnSpectrum;
import org.berrywatt.light.Uniformity;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.TypedAmount;
import org.jspecify.annotations.Nullable;

/**
 * A station with everything ever recorded of it.
 *
 * @param setup the latest settings
 * @param corrections of its settings, oldest first
 * @param spectra given for its lamp, oldest first
 * @param spectrum the latest of them; null where there is none or it was taken back
 * @param light its readings
 * @param grids how even its light is, oldest first
 */
record StationRecord(
        StationEntity station,
        StationSetup setup,
        List<StationCorrection> corrections,
        List<StationSpectrum> spectra,
        @Nullable OwnSpectrum spectrum,
        LightLog light,
        List<GridEntity> grids) {

    private static final double DEGREES_PER_RADIAN = 180 / Math.PI;

    Station view() {
        return new Station(
                station.id(),
                station.labDayId(),
                setup.name(),
                setup.lamp(),
                spectrum == null ? setup.lamp() : spectrum,
                setup.instrument(),
                distanceM(),
                angleDeg(),
                uniformity(),
                light.valid());
    }

    @Nullable
    Double distanceM() {
        return Optional.ofNullable(setup.distance()).map(TypedAmount::valueSi).orElse(null);
    }

    @Nullable
    Double angleDeg() {
        return Optional.ofNullable(setup.angle())
                .map(angle -> angle.valueSi() * DEGREES_PER_RADIAN)
                .orElse(null);
    }

    /** As it would be had it been set up so. */
    StationRecord with(StationSetup corrected) {
        return new StationRecord(station, corrected, corrections, spectra, spectrum, light, grids);
    }

    /** As it would be under a lamp of this spectrum; null for one that stands for its kind. */
    StationRecord with(@Nullable OwnSpectrum other) {
        return new StationRecord(station, setup, corrections, spectra, other, light, grids);
    }

    /** As it would be with a reading set aside or taken back. */
    StationRecord with(LightSetAside setAside) {
        return new StationRecord(station, setup, corrections, spectra, spectrum, light.with(setAside), grids);
    }

    /**
     * The station as it would be with another number in place of a reading.
     *
     * @throws Refusal {@code replaced.already}
     */
    Station ifCorrected(UUID readingId, RawLight raw) {
        var wrong = light.standing(readingId).orElseThrow(() -> Refusal.of(ProblemCode.REPLACED_ALREADY));
        return view().with(raw.inPlaceOf(wrong));
    }

    private @Nullable Uniformity uniformity() {
        return grids.isEmpty() ? null : grids.get(grids.size() - 1).uniformity();
    }
}
