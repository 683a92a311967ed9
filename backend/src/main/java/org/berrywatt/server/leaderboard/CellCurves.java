package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.Optional;
import org.berrywatt.contract.CellCurveAnswer;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.server.cell.Cell;

/** The curve of a cell whose counting reading is a load sweep, per area and in the day's reference light. */
final class CellCurves {

    private CellCurves() {}

    static Optional<CellCurveAnswer> of(Cell cell, DayRecord record, CellJudge judge) {
        if (judge.judge(cell) instanceof Judged.Counts counts) {
            double irradianceWm2 = counts.result().irradiance().effectiveWm2().value();
            double timesLight = record.day().referenceIrradianceWm2() / irradianceWm2;
            return Gathered.of(cell, record)
                    .complete()
                    .filter(read -> Meter.underLight(read.underLight()) instanceof LoadSweep)
                    .map(read -> of(cell, read, timesLight / read.area().areaM2()));
        }
        return Optional.empty();
    }

    private static CellCurveAnswer of(Cell cell, ReadCell read, double perArea) {
        List<SweepPoint> points = ((LoadSweep) Meter.underLight(read.underLight())).points();
        return new CellCurveAnswer(
                cell.id(),
                cell.label(),
                points.stream()
                        .map(point -> new CellCurveAnswer.Point(point.voltageV(), perArea * point.currentA()))
                        .toList());
    }
}
