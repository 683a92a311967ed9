package org.berrywatt.server.calculator;

import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.Remark;
import org.berrywatt.contract.calculation.CurveAnswer;
import org.berrywatt.contract.calculation.CurveRequest;
import org.berrywatt.contract.calculation.FittedDiode;
import org.berrywatt.curve.DiodeFit;
import org.berrywatt.curve.PeakPoint;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.server.typed.SweepRows;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** The figures of a measured curve. */
final class CurveCalculation {

    private static final double M2_PER_CM2 = 1e-4;

    private CurveCalculation() {}

    static CurveAnswer of(CurveRequest request) {
        var points = CurvePoints.of(request.points());
        var sweep = SweepRows.sweep(points);
        return answer(points, sweep, efficiency(request, sweep.figures().maximumPowerW()), diode(request, points));
    }

    private static FittedDiode diode(CurveRequest request, List<SweepPoint> points) {
        var temperatureC = Ranges.FIT_TEMPERATURE_C.or(Ranges.ROOM_C, "temperatureC", request.temperatureC());
        return FittedDiodes.of(DiodeFit.of(points, temperatureC), Series.cells(request.cellsInSeries()));
    }

    /** Maximum power over irradiance times area, both taken as exact. */
    private static @Nullable Estimate efficiency(CurveRequest request, Estimate powerW) {
        var areaCm2 = Ranges.AREA_CM2.maybe("areaCm2", request.areaCm2());
        var irradianceWm2 = Ranges.IRRADIANCE_WM2.maybe("irradianceWm2", request.irradianceWm2());
        return areaCm2 == null || irradianceWm2 == null
                ? null
                : powerW.times(1 / (irradianceWm2 * areaCm2 * M2_PER_CM2));
    }

    private static CurveAnswer answer(
            List<SweepPoint> points, Sweep sweep, @Nullable Estimate efficiency, FittedDiode diode) {
        var figures = sweep.figures();
        var peak = sweep.peak();
        return new CurveAnswer(
                points.stream()
                        .map(point -> new CurvePoint(point.voltageV(), point.currentA()))
                        .toList(),
                figures.shortCircuitCurrentA().value(),
                figures.openCircuitVoltageV().value(),
                figures.maximumPowerW().value(),
                peak.voltageV().value(),
                peak.currentA().value(),
                figures.fillFactor().value(),
                efficiency == null ? null : efficiency.value(),
                diode,
                uncertainties(figures, peak, efficiency),
                notes(figures));
    }

    private static CurveAnswer.Uncertainties uncertainties(
            SweepFigures figures, PeakPoint peak, @Nullable Estimate efficiency) {
        return new CurveAnswer.Uncertainties(
                Spreads.of(figures.shortCircuitCurrentA()),
                Spreads.of(figures.openCircuitVoltageV()),
                Spreads.of(figures.maximumPowerW()),
                Spreads.of(peak.voltageV()),
                Spreads.of(peak.currentA()),
                Spreads.of(figures.fillFactor()),
                Spreads.ofNullable(efficiency));
    }

    private static List<Remark> notes(SweepFigures figures) {
        return Stream.of("note.peakNotBracketed")
                .filter(key -> !figures.peakBracketed())
                .map(Remark::of)
                .toList();
    }
}
