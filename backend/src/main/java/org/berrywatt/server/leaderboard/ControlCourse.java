package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.groupingBy;

import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import org.berrywatt.contract.ControlCellAnswer;
import org.berrywatt.contract.ControlCellAnswer.Check;
import org.berrywatt.contract.ControlCellAnswer.Course;
import org.berrywatt.contract.Figure;
import org.berrywatt.light.ControlCell;
import org.berrywatt.light.ControlReading;
import org.berrywatt.light.LitCurrent;
import org.berrywatt.reading.Terminals;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.light.Station;
import org.berrywatt.server.worked.Worked;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * What the readings of a day's control cell tell of its stations.
 *
 * @param darkA current of the covered control cell
 * @param at its readings by station, by name, oldest first
 */
record ControlCourse(DayRecord day, Estimate darkA, Map<Station, List<LitReading>> at) {

    /** Clips set anew: 6 % of the current (common practice, no source). */
    private static final double CLIPS_UNCERTAINTY = 0.06;

    static final ControlCellAnswer NONE = new ControlCellAnswer(null, null, List.of(), List.of());

    static ControlCellAnswer of(Cell control, DayRecord day) {
        var readings = day.readingsOf(control);
        var dark = Evidence.among(readings).dark().map(Meter::terminals).map(Terminals::currentA);
        var darkA = dark.orElse(Estimate.exact(0));
        var byStation = CellHistory.of(control, readings, day).readings().stream()
                .filter(reading -> reading.currentA().value() > darkA.value())
                .collect(groupingBy(LitReading::stationId));
        return new ControlCourse(day, darkA, inOrder(day, byStation)).answer(control);
    }

    private static Map<Station, List<LitReading>> inOrder(DayRecord day, Map<UUID, List<LitReading>> byStation) {
        var ordered = new LinkedHashMap<Station, List<LitReading>>();
        day.stations().values().stream()
                .filter(station -> byStation.containsKey(station.id()))
                .sorted(Comparator.comparing(Station::name))
                .forEach(station -> ordered.put(station, byStation.getOrDefault(station.id(), List.of())));
        return ordered;
    }

    private ControlCellAnswer answer(Cell control) {
        var stations = List.copyOf(at.keySet());
        var checks = IntStream.range(0, stations.size())
                .boxed()
                .flatMap(i ->
                        stations.subList(i + 1, stations.size()).stream().map(other -> check(stations.get(i), other)));
        return new ControlCellAnswer(
                control.id(),
                control.label(),
                stations.stream().map(this::course).toList(),
                checks.toList());
    }

    private Course course(Station station) {
        var readings = readingsAt(station);
        return new Course(
                station.id(),
                station.name(),
                readings.stream()
                        .map(reading -> new ControlCellAnswer.ControlReading(
                                reading.at(),
                                Worked.figure(photocurrentA(reading)),
                                Worked.figure(reading.light().effectiveWm2())))
                        .toList(),
                driftPerHour(readings));
    }

    private @Nullable Figure driftPerHour(List<LitReading> readings) {
        var instants = readings.stream().map(LitReading::at).distinct().count();
        return instants < 2
                ? null
                : Worked.figure(ControlCell.driftPerHour(readings.stream()
                        .map(reading -> new ControlReading(reading.at(), photocurrentA(reading)))
                        .toList()));
    }

    private Check check(Station one, Station other) {
        var pair = nearest(readingsAt(one), readingsAt(other));
        var found = ControlCell.agreement(lit(pair.get(0), pair), lit(pair.get(1), pair));
        return new Check(
                one.name(),
                other.name(),
                Worked.figure(found.lightRatio()),
                Worked.figure(found.currentRatio()),
                found.agrees());
    }

    /** The two readings that lie nearest in time, of equally near ones the latest. */
    private static List<LitReading> nearest(List<LitReading> one, List<LitReading> other) {
        return one.stream()
                .flatMap(first -> other.stream().map(second -> List.of(first, second)))
                .min(Comparator.<List<LitReading>, Duration>comparing(ControlCourse::apart)
                        .thenComparing(pair -> pair.get(0).at(), Comparator.reverseOrder()))
                .orElseThrow();
    }

    private static Duration apart(List<LitReading> pair) {
        return Duration.between(pair.get(0).at(), pair.get(1).at()).abs();
    }

    /** With the uncertainties that the two do not share. */
    private LitCurrent lit(LitReading reading, List<LitReading> pair) {
        return new LitCurrent(CellHistory.light(reading, pair), photocurrentA(reading));
    }

    private Estimate photocurrentA(LitReading reading) {
        var own = reading.currentA().minus(darkA);
        return new Estimate(own.value(), Math.hypot(own.standardUncertainty(), CLIPS_UNCERTAINTY * own.value()));
    }

    private List<LitReading> readingsAt(Station station) {
        return Objects.requireNonNull(at.get(station));
    }
}
