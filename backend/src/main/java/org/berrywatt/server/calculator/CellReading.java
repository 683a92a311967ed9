package org.berrywatt.server.calculator;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.NormalisationRequest;
import org.berrywatt.contract.calculation.NormalisationRequest.Row;
import org.berrywatt.meter.Display;
import org.berrywatt.normalise.CellMeter;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.SweepRow;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.SweepRows;
import org.jspecify.annotations.Nullable;

/** What a classroom meter showed of a cell, under light and in the dark. */
final class CellReading {

    private static final CellMeter METER = CellMeter.classroom();
    private static final double VOLTAGE_STEP_V = 1e-3;
    private static final int FEWEST_ROWS = 5;
    private static final int MOST_ROWS = 400;

    private CellReading() {}

    static UnderLight underLight(NormalisationRequest request) {
        return request.points() == null
                ? METER.spot(
                        current(
                                "currentA",
                                Ranges.CURRENT_A.need("currentA", request.currentA()),
                                request.currentResolutionA()),
                        voltage(
                                "voltageV",
                                Ranges.VOLTAGE_V.need("voltageV", request.voltageV()),
                                request.voltageResolutionV()))
                : sweep(request);
    }

    static @Nullable Shown darkCurrent(NormalisationRequest request) {
        var shown = Ranges.CURRENT_A.maybe("darkCurrentA", request.darkCurrentA());
        return shown == null ? null : METER.current(current("darkCurrentA", shown, request.darkCurrentResolutionA()));
    }

    private static LoadSweep sweep(NormalisationRequest request) {
        if (request.voltageV() != null || request.currentA() != null) {
            throw Refusal.of(ProblemCode.CALCULATION_EITHER).field("points").limit("points, voltageV + currentA");
        }
        var rows = Entries.read("points", request.points(), FEWEST_ROWS, MOST_ROWS, CellReading::row);
        return LoadSweep.of(SweepRows.sweep(rows.stream().map(METER::point).toList()));
    }

    private static SweepRow row(String path, Row row) {
        var loadOhm = Ranges.LOAD_OHM.maybe(path + ".loadOhm", row.loadOhm());
        var voltageV = Ranges.VOLTAGE_V.maybe(path + ".voltageV", row.voltageV());
        var currentA = Ranges.CURRENT_A.maybe(path + ".currentA", row.currentA());
        requireTwo(path, loadOhm, voltageV, currentA);
        return new SweepRow(
                loadOhm,
                voltageV == null ? null : voltage(path + ".voltageV", voltageV, row.voltageResolutionV()),
                currentA == null ? null : current(path + ".currentA", currentA, row.currentResolutionA()));
    }

    /** Over no load a voltage tells no current. */
    private static void requireTwo(
            String path, @Nullable Double loadOhm, @Nullable Double voltageV, @Nullable Double currentA) {
        var load = loadOhm != null && (loadOhm > 0 || voltageV == null);
        if (voltageV == null ? currentA == null || !load : currentA == null && !load) {
            throw Refusal.of(ProblemCode.SWEEP_ROW_INCOMPLETE).field(path);
        }
    }

    private static Display voltage(String path, double shownV, @Nullable Double stepV) {
        return new Display(shownV, Ranges.VOLTAGE_UNCERTAINTY_V.or(VOLTAGE_STEP_V, stepOf(path), stepV));
    }

    private static Display current(String path, double shownA, @Nullable Double stepA) {
        var usual = METER.meter().rangeOf(shownA, 0).resolutionA();
        return new Display(shownA, Ranges.CURRENT_UNCERTAINTY_A.or(usual, stepOf(path), stepA));
    }

    /** {@code currentA} has its step in {@code currentResolutionA}. */
    private static String stepOf(String path) {
        return path.substring(0, path.length() - 1) + "Resolution" + path.substring(path.length() - 1);
    }
}
