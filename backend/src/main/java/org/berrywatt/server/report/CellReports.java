package org.berrywatt.server.report;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReportAnswer.Aside;
import org.berrywatt.contract.ReportAnswer.CellReport;
import org.berrywatt.server.cell.Cell;

/** A cell as it stands in a report. */
final class CellReports {

    private CellReports() {}

    /** @param readings all of them, oldest first, replaced and set aside ones among them */
    static CellReport of(
            Cell cell, CellResultAnswer result, List<ReadingAnswer> readings, Set<String> parametersAsked) {
        var valid = readings.stream()
                .filter(reading ->
                        reading.replacedBy() == null && aside(reading).findAny().isEmpty())
                .toList();
        return new CellReport(
                cell.id(),
                cell.label(),
                result.standing(),
                result.remark(),
                result.openCircuitVoltageV(),
                result.currentDensityAm2(),
                result.fillFactor(),
                result.powerDensityWm2(),
                result.notes(),
                sweep(valid),
                asides(readings),
                Completeness.of(cell, parametersAsked, valid));
    }

    private static List<CurvePoint> sweep(List<ReadingAnswer> valid) {
        return valid.stream()
                .filter(reading -> reading.kind().equals("sweep"))
                .reduce((earlier, later) -> later)
                .map(ReadingAnswer::points)
                .orElse(List.of());
    }

    private static List<Aside> asides(List<ReadingAnswer> readings) {
        return readings.stream().flatMap(CellReports::aside).toList();
    }

    /** The last word on it, where that sets it aside. */
    private static Stream<Aside> aside(ReadingAnswer reading) {
        return reading.setAside().stream()
                .reduce((earlier, later) -> later)
                .flatMap(last -> Optional.ofNullable(last.reason())
                        .map(reason -> new Aside(reading.kind(), reading.readAt(), reason, last.teacher())))
                .stream();
    }
}
