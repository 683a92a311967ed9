package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.contract.Remark;
import org.berrywatt.light.Linearity;
import org.berrywatt.light.LitCurrent;
import org.berrywatt.reading.Settling;
import org.berrywatt.reading.SolarCheck.Lit;
import org.berrywatt.reading.TimedValue;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.reading.ReadingKind;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * What all light readings of a cell tell together: whether it still settles, and whether its current follows the light.
 *
 * @param readings with a voltage, a current and the light of their station, oldest first
 * @param refills when the cell was filled anew, oldest first
 */
record CellHistory(List<LitReading> readings, List<Instant> refills) {

    /** A cell is taken as the same over this time, so that its lights can be compared (common practice, no source). */
    private static final Duration SAME_CELL = Duration.ofMinutes(30);

    /** Nearer lights do not test linearity. */
    private static final double LEAST_SPAN = 1.5;

    static CellHistory of(Cell cell, List<RecordedReading> all, DayRecord day) {
        return new CellHistory(
                all.stream()
                        .filter(reading -> reading.kind() == ReadingKind.LIGHT)
                        .filter(reading -> reading.current() != null && reading.voltage() != null)
                        .flatMap(reading -> lit(cell, reading, day).stream())
                        .toList(),
                cell.refills());
    }

    /** Readings up to an instant as the science takes them. */
    List<Lit> litBefore(Instant at) {
        return readings.stream()
                .filter(reading -> reading.at().isBefore(at))
                .map(LitReading::lit)
                .toList();
    }

    /**
     * What to know about the reading that counts.
     *
     * @param darkA current of the covered cell
     */
    List<Remark> remarks(RecordedReading counting, Estimate darkA) {
        return Stream.of(Remarks.refilled(refills), settling(counting), linearity(counting, darkA))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Current per light at the station where the cell was read last, since it was filled last. */
    List<TimedValue> latestSeries() {
        return readings.isEmpty()
                ? List.of()
                : series(
                        readings.get(readings.size() - 1).stationId(),
                        readings.get(readings.size() - 1).at());
    }

    /**
     * When the readings first said that the cell had settled, since it was filled last: of all stations the earliest.
     */
    Optional<Instant> settledAt() {
        return readings.isEmpty() ? Optional.empty() : settledSinceFilled();
    }

    private Optional<Instant> settledSinceFilled() {
        Instant latest = readings.get(readings.size() - 1).at();
        return sinceFilled(latest)
                .map(LitReading::stationId)
                .distinct()
                .flatMap(station -> firstSettled(series(station, latest)).stream())
                .min(Comparator.naturalOrder());
    }

    private static Optional<Instant> firstSettled(List<TimedValue> series) {
        return IntStream.rangeClosed(1, series.size())
                .filter(read -> Settling.of(series.subList(0, read)).state() == Settling.State.SETTLED)
                .mapToObj(read -> series.get(read - 1).at())
                .findFirst();
    }

    private Optional<Remark> settling(RecordedReading counting) {
        var series = series(counting.stationId(), counting.readAt());
        return series.isEmpty()
                ? Optional.empty()
                : Remarks.settling(
                        Settling.of(series), series.get(series.size() - 1).at());
    }

    /** A cell settles anew from each filling. */
    private List<TimedValue> series(@Nullable UUID stationId, Instant until) {
        return sinceFilled(until)
                .filter(reading -> reading.stationId().equals(stationId))
                .filter(reading -> !reading.at().isAfter(until))
                .map(LitReading::currentPerLight)
                .toList();
    }

    private Stream<LitReading> sinceFilled(Instant at) {
        var filled = refills.stream().filter(refill -> refill.isBefore(at)).reduce((earlier, later) -> later);
        return readings.stream()
                .filter(reading ->
                        filled.filter(refill -> !reading.at().isAfter(refill)).isEmpty());
    }

    private Optional<Remark> linearity(RecordedReading counting, Estimate darkA) {
        var near = readings.stream()
                .filter(reading ->
                        Duration.between(reading.at(), counting.readAt()).abs().compareTo(SAME_CELL) <= 0)
                .toList();
        var points = near.stream()
                .flatMap(reading -> reading.photocurrent(darkA, light(reading, near)).stream())
                .toList();
        return span(points) >= LEAST_SPAN ? Remarks.linearity(Linearity.of(points)) : Optional.empty();
    }

    /** What readings under one kind of lamp by one kind of instrument share does not count between them. */
    static Estimate light(LitReading reading, List<LitReading> all) {
        var light = reading.light();
        var alike = all.stream()
                .allMatch(other -> other.light().lamp().equals(light.lamp())
                        && other.light().instrument() == light.instrument());
        var own = (alike ? light.readingWm2() : light.effectiveWm2()).relativeUncertainty();
        var effective = light.effectiveWm2().value();
        return new Estimate(effective, effective * Math.hypot(own, reading.placeUncertainty()));
    }

    private static double span(List<LitCurrent> points) {
        var lights = points.stream().mapToDouble(it -> it.lightWm2().value()).summaryStatistics();
        return points.isEmpty() ? 1 : lights.getMax() / lights.getMin();
    }

    private static Optional<LitReading> lit(Cell cell, RecordedReading reading, DayRecord day) {
        return day.stationOf(reading)
                .flatMap(station -> CellLight.of(cell, station, reading.readAt())
                        .map(light -> new LitReading(
                                station.id(),
                                station.lamp(),
                                reading.readAt(),
                                Meter.terminals(reading),
                                light.irradiance(),
                                light.placeUncertainty())));
    }
}
