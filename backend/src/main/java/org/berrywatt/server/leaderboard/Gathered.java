package org.berrywatt.server.leaderboard;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.berrywatt.contract.Remark;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.CellArea;
import org.berrywatt.server.light.Station;
import org.berrywatt.server.reading.RecordedReading;

/**
 * What a result needs of a cell, as far as it is recorded.
 *
 * @param station where the cell lay under light
 * @param light the light there at that time
 * @param history all its light readings
 */
record Gathered(
        Cell cell, Evidence evidence, Optional<Station> station, Optional<LightAtCell> light, CellHistory history) {

    static Gathered of(Cell cell, DayRecord day) {
        return of(cell, day, day.readingsOf(cell));
    }

    /** The same of each person who read the cell under light, apart from the one whose reading counts. */
    List<Gathered> byOthers(DayRecord day) {
        List<RecordedReading> all = day.readingsOf(cell);
        return all.stream()
                .filter(reading -> reading.kind().isUnderLight())
                .map(RecordedReading::readBy)
                .filter(other -> evidence.underLight()
                        .filter(counting -> !counting.readBy().equals(other))
                        .isPresent())
                .distinct()
                .map(other -> of(cell, day, readBy(other, all)))
                .toList();
    }

    private static List<RecordedReading> readBy(String person, List<RecordedReading> all) {
        return all.stream()
                .filter(reading ->
                        !reading.kind().isUnderLight() || reading.readBy().equals(person))
                .toList();
    }

    /** The same by some of its readings, oldest first. */
    static Gathered of(Cell cell, DayRecord day, List<RecordedReading> readings) {
        Evidence evidence = Evidence.among(readings);
        Optional<Station> station = evidence.underLight().flatMap(day::stationOf);
        Optional<LightAtCell> light = evidence.underLight()
                .flatMap(reading -> station.flatMap(it -> CellLight.of(cell, it, reading.readAt())));
        return new Gathered(cell, evidence, station, light, CellHistory.of(cell, readings, day));
    }

    /** When the reading that counts was taken. */
    Optional<Instant> underLightAt() {
        return evidence.underLight().map(RecordedReading::readAt);
    }

    /** Everything, once nothing is missing. */
    Optional<ReadCell> complete() {
        return area().flatMap(area -> evidence.dark()
                .flatMap(dark -> evidence.underLight()
                        .flatMap(reading -> light.map(it ->
                                new ReadCell(cell.teamId().toString(), area, dark, reading, it, evidence.toggles())))));
    }

    /** What to do next, most urgent first: readings first, since a fresh cell does not wait. */
    List<Remark> missing() {
        List<Remark> missing = new ArrayList<>(readingsMissing());
        if (evidence.underLight().isPresent() && light.isEmpty()) {
            station.map(Remarks::stationDark).ifPresent(missing::add);
        }
        if (area().isEmpty()) {
            missing.add(Remarks.NO_AREA);
        }
        return missing;
    }

    private List<Remark> readingsMissing() {
        Optional<RecordedReading> dark = evidence.dark();
        Optional<RecordedReading> light = evidence.underLight();
        if (dark.isEmpty() && light.isEmpty()) {
            return List.of(Remarks.BUILDING);
        }
        return dark.isEmpty()
                ? List.of(Remarks.NO_DARK_CHECK)
                : light.isEmpty() ? List.of(Remarks.NO_LIGHT_READING) : List.of();
    }

    private Optional<CellArea> area() {
        return Optional.ofNullable(cell.area());
    }
}
