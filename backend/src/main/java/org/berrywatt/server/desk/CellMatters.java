package org.berrywatt.server.desk;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.Remark;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.reading.RecordedReading;

/** What a cell's standing asks of the teacher. */
final class CellMatters {

    private static final Map<String, Kind> BY_REMARK = Map.of(
            "standing.noDarkCheck", Kind.NO_DARK_CHECK,
            "standing.sweepUnusable", Kind.CONTRADICTION,
            "standing.outOfRange", Kind.CONTRADICTION,
            "standing.oxideOnly", Kind.CONTRADICTION,
            "standing.readDifferently", Kind.READ_DIFFERENTLY,
            "standing.notReadAgain", Kind.READ_AGAIN);

    private static final Map<String, Kind> BY_FAMILY = Map.of(
            "standing.galvanic.", Kind.BATTERY,
            "standing.reversed.", Kind.CONTRADICTION,
            "standing.noResponse.", Kind.CONTRADICTION);

    private CellMatters() {}

    static Stream<Matter> of(DeskRecord record) {
        return record.cells().stream().flatMap(cell -> of(cell, record).stream());
    }

    private static Optional<Matter> of(Cell cell, DeskRecord record) {
        List<RecordedReading> readings = record.readingsOf(cell);
        Optional<Remark> remark =
                Optional.ofNullable(record.standings().get(cell.id())).map(CellStanding::remark);
        return readings.isEmpty()
                ? Optional.empty()
                : remark.flatMap(it ->
                        kind(it.key()).map(kind -> Matter.ofCell(kind, cell, since(kind, readings), it)));
    }

    /** A missing dark check is missing since the first reading; all else was told by the last. */
    private static Instant since(Kind kind, List<RecordedReading> readings) {
        return readings.get(kind == Kind.NO_DARK_CHECK ? 0 : readings.size() - 1)
                .readAt();
    }

    private static Optional<Kind> kind(String remark) {
        return Optional.ofNullable(BY_REMARK.get(remark))
                .or(() -> BY_FAMILY.entrySet().stream()
                        .filter(family -> remark.startsWith(family.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst());
    }
}
