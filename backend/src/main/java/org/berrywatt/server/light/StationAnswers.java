package org.berrywatt.server.light;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.GridAnswer;
import org.berrywatt.contract.IrradianceAnswer;
import org.berrywatt.contract.SpectrumAnswer;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationAnswer.DyeLight;
import org.berrywatt.contract.StationSettings;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.server.typed.TypedAmount;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Input;

/** Stations as they travel. */
final class StationAnswers {

    private StationAnswers() {}

    static StationAnswer of(StationRecord record) {
        var station = record.station();
        var setup = record.setup();
        return new StationAnswer(
                station.id(),
                station.labDayId(),
                setup.name(),
                setup.lamp().key(),
                setup.instrument().key(),
                record.distanceM(),
                record.angleDeg(),
                setup.lamp().staleAfterMinutes(),
                settings(record),
                spectra(record),
                record.light().readings().stream()
                        .map(reading -> of(record, reading))
                        .toList(),
                record.grids().stream().map(StationAnswers::of).toList(),
                dyes(record));
    }

    private static List<StationSettings> settings(StationRecord record) {
        var first =
                record.station().setup().settings(null, null, record.station().createdAt());
        return Stream.concat(Stream.of(first), record.corrections().stream().map(StationCorrection::answer))
                .toList();
    }

    /** Only the one that holds is drawn. */
    private static List<SpectrumAnswer> spectra(StationRecord record) {
        var all = record.spectra();
        return IntStream.range(0, all.size())
                .mapToObj(i -> all.get(i).answer(i == all.size() - 1 ? record.spectrum() : null))
                .toList();
    }

    /** The newest reading as each dye sees it. */
    private static List<DyeLight> dyes(StationRecord record) {
        var readings = record.view().readings();
        return readings.isEmpty()
                ? List.of()
                : Arrays.stream(DyeFamily.values())
                        .map(dye -> new DyeLight(
                                dye.key(),
                                figure(light(record.view(), readings.get(readings.size() - 1), dye)
                                        .effectiveWm2())))
                        .toList();
    }

    /** One grid out of a station's answer. */
    static GridAnswer grid(StationAnswer station, UUID id) {
        return station.grids().stream()
                .filter(grid -> grid.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** One reading out of a station's answer. */
    static IrradianceAnswer reading(StationAnswer station, UUID id) {
        return station.readings().stream()
                .filter(reading -> reading.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static IrradianceAnswer of(StationRecord record, LightReadingEntity reading) {
        var view = record.light().view(reading);
        return new IrradianceAnswer(
                reading.id(),
                reading.stationId(),
                reading.reading().typed(),
                figure(total(record.view(), view)),
                reading.acceptedAt(),
                view.at(),
                record.light().replacementOf(reading.id()),
                record.light().setAsidesOf(reading));
    }

    private static GridAnswer of(GridEntity grid) {
        var uniformity = grid.uniformity();
        return new GridAnswer(
                grid.id(),
                grid.stationId(),
                grid.places().stream().map(TypedAmount::typed).toList(),
                grid.columns(),
                uniformity.nonUniformity(),
                uniformity.grade().key(),
                grid.acceptedAt());
    }

    /** Total irradiance does not depend on the dye. */
    private static Estimate total(Station station, LightReading reading) {
        return light(station, reading, DyeFamily.OTHER).totalWm2();
    }

    private static EffectiveIrradiance light(Station station, LightReading reading, DyeFamily dye) {
        var raw = new Estimate(reading.valueSi(), resolutionUncertainty(reading));
        return EffectiveIrradiance.of(station.source(), station.instrument(), dye, raw, reading.lux());
    }

    private static double resolutionUncertainty(LightReading reading) {
        return Input.rectangular("resolution", reading.valueSi(), "", reading.resolutionSi() / 2)
                .standardUncertainty();
    }

    private static Figure figure(Estimate estimate) {
        return new Figure(estimate.value(), estimate.standardUncertainty(), estimate.low(), estimate.high());
    }
}
