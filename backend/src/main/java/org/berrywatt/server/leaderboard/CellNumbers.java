package org.berrywatt.server.leaderboard;

import java.util.List;
import org.berrywatt.contract.calculation.LightRequest;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.contract.calculation.NormalisationRequest.Row;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.normalise.Reference;
import org.berrywatt.server.reading.Measured;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedPoint;
import org.jspecify.annotations.Nullable;

/** What a cell's result rests on, as the calculator takes it: the same numbers give the same result there. */
final class CellNumbers {

    private static final double CM2_PER_M2 = 1e4;

    private CellNumbers() {}

    static NormalisationRequest of(ReadCell cell, Reference reference) {
        boolean sweep = cell.underLight().kind() == ReadingKind.SWEEP;
        Measured voltage = sweep ? null : cell.underLight().voltage();
        Measured current = sweep ? null : cell.underLight().current();
        Measured dark = cell.dark().current();
        EffectiveIrradiance light = cell.light().irradiance();
        return new NormalisationRequest(
                value(voltage),
                resolution(voltage),
                value(current),
                resolution(current),
                sweep ? rows(cell.underLight().points()) : null,
                value(dark),
                resolution(dark),
                cell.area().areaM2() * CM2_PER_M2,
                cell.area().standardUncertaintyM2() * CM2_PER_M2,
                light(light),
                null,
                null,
                100 * light.readingWm2().relativeUncertainty(),
                null,
                null,
                null,
                null,
                reference.irradianceWm2(),
                reference.areaM2() * CM2_PER_M2,
                null);
    }

    private static LightRequest light(EffectiveIrradiance light) {
        boolean lux = light.instrument() == Instrument.LUX_METER;
        return new LightRequest(
                light.lamp().key(),
                lux ? light.readingLx() : null,
                lux ? null : light.readingWm2().value(),
                null,
                null,
                null,
                null,
                null,
                light.dye().key(),
                null,
                light.instrument().key());
    }

    private static List<@Nullable Row> rows(List<RecordedPoint> points) {
        return points.stream().<@Nullable Row>map(CellNumbers::row).toList();
    }

    private static Row row(RecordedPoint point) {
        return new Row(
                point.loadOhm(),
                value(point.voltage()),
                resolution(point.voltage()),
                value(point.current()),
                resolution(point.current()));
    }

    private static @Nullable Double value(@Nullable Measured shown) {
        return shown == null ? null : shown.valueSi();
    }

    private static @Nullable Double resolution(@Nullable Measured shown) {
        return shown == null ? null : shown.resolutionSi();
    }
}
