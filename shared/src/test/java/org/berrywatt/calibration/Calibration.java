package org.berrywatt.calibration;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.Place;
import org.berrywatt.leaderboard.Standing;
import org.jspecify.annotations.Nullable;

/** What many simulated days say of the intervals and chances that were stated. */
record Calibration(List<List<DayTeam>> days) {

    /** Stations have 60, 100 and 200 W/m², so that most are within a factor of two of this reference. */
    static final double USUAL_REFERENCE_WM2 = 100;

    static Calibration ofDays(int count) {
        return ofDays(count, USUAL_REFERENCE_WM2);
    }

    static Calibration ofDays(int count, double referenceWm2) {
        return new Calibration(IntStream.range(0, count)
                .mapToObj(number -> SimulatedDay.teams(number, referenceWm2))
                .toList());
    }

    /** Whether the interval of each such cell holds its truth. */
    Share cells(Predicate<ReadCell> which) {
        return Share.of(cells().filter(which).map(ReadCell::isCovered));
    }

    /** Whether the interval of each difference of two such cells of one station holds its truth. */
    Share differences(Predicate<ReadCell> which) {
        return Share.of(pairs(which).map(Pair::isCovered));
    }

    /** Width of those intervals over that of two cells which share nothing, on average. */
    double sharpening(Predicate<ReadCell> which) {
        return pairs(which).mapToDouble(Pair::sharpening).average().orElse(Double.NaN);
    }

    /** Whether the place interval of each team holds its true place: one more than the number of teams that are truly above. */
    Share places() {
        return Share.of(days.stream()
                .flatMap(day -> SimulatedDay.standings(day).stream()
                        .map(standing -> contains(standing.place(), truePlace(figure(standing, day), day)))));
    }

    /** Chances to be above the next that were stated within a range, and whether it was so; two teams of nothing but failures left out. */
    List<StatedChance> chances(double from, double below) {
        return days.stream()
                .flatMap(Calibration::chances)
                .filter(chance -> from <= chance.stated() && chance.stated() < below)
                .toList();
    }

    private Stream<ReadCell> cells() {
        return days.stream().flatMap(List::stream).flatMap(team -> team.cells().stream());
    }

    private Stream<Pair> pairs(Predicate<ReadCell> which) {
        return days.stream()
                .map(day -> day.stream()
                        .flatMap(team -> team.cells().stream())
                        .filter(which)
                        .toList())
                .flatMap(Pair::ofOneStation);
    }

    private static Stream<StatedChance> chances(List<DayTeam> day) {
        var standings = SimulatedDay.standings(day);
        return IntStream.range(0, standings.size() - 1)
                .mapToObj(i -> StatedChance.of(
                        Objects.requireNonNull(standings.get(i).place()),
                        figure(standings.get(i), day),
                        figure(standings.get(i + 1), day)))
                .flatMap(Stream::ofNullable);
    }

    private static boolean contains(@Nullable Place place, long number) {
        return place != null && place.best() <= number && number <= place.worst();
    }

    private static long truePlace(double figureWm2, List<DayTeam> day) {
        return 1 + day.stream().filter(team -> team.trueFigureWm2() > figureWm2).count();
    }

    private static double figure(Standing standing, List<DayTeam> day) {
        return day.stream()
                .filter(team -> team.id().equals(standing.teamId()))
                .findFirst()
                .orElseThrow()
                .trueFigureWm2();
    }
}
