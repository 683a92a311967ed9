package org.berrywatt.server.calculator;

import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.CurveRequest.Point;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/** Rows of a sweep as points of a curve; what a row leaves out follows from Ohm's law over its load. */
final class CurvePoints {

    private static final int FEWEST = 5;
    private static final int MOST = 400;

    private CurvePoints() {}

    static List<SweepPoint> of(@Nullable List<@Nullable Point> rows) {
        return Entries.read("points", rows, FEWEST, MOST, CurvePoints::point);
    }

    private static SweepPoint point(String path, Point row) {
        var voltageV = Ranges.VOLTAGE_V.maybe(path + ".voltageV", row.voltageV());
        var currentA = Ranges.CURRENT_A.maybe(path + ".currentA", row.currentA());
        var loadOhm = Ranges.LOAD_OHM.maybe(path + ".loadOhm", row.loadOhm());
        return new SweepPoint(
                voltageV(path, voltageV, currentA, loadOhm),
                currentA(path, voltageV, currentA, loadOhm),
                Ranges.VOLTAGE_UNCERTAINTY_V.or(0, path + ".voltageUncertaintyV", row.voltageUncertaintyV()),
                Ranges.CURRENT_UNCERTAINTY_A.or(0, path + ".currentUncertaintyA", row.currentUncertaintyA()));
    }

    private static double voltageV(
            String path, @Nullable Double voltageV, @Nullable Double currentA, @Nullable Double loadOhm) {
        if (voltageV != null) {
            return voltageV;
        }
        return currentA != null && loadOhm != null ? currentA * loadOhm : incomplete(path);
    }

    private static double currentA(
            String path, @Nullable Double voltageV, @Nullable Double currentA, @Nullable Double loadOhm) {
        if (currentA != null) {
            return currentA;
        }
        return voltageV != null && loadOhm != null && loadOhm > 0 ? voltageV / loadOhm : incomplete(path);
    }

    private static double incomplete(String path) {
        throw Refusal.of(ProblemCode.SWEEP_ROW_INCOMPLETE).field(path);
    }
}
