package org.berrywatt.server.leaderboard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.contract.SideFiguresAnswer;
import org.berrywatt.leaderboard.Reproducibility;
import org.berrywatt.leaderboard.SideFigures;

/** What else is told of a team: the same whatever the day ranks by, but for the best verified cell. */
final class SideAnswers {

    private static final double MINUTES_PER_HOUR = 60;

    private SideAnswers() {}

    static SideFiguresAnswer of(SideFigures side, List<Rated> cells, Rating rating) {
        return new SideFiguresAnswer(
                side.working(),
                side.declared(),
                Reproducibility.geometricDeviation(powers(cells)),
                side.bestVerifiedCell(),
                kept(cells, rating).orElse(null));
    }

    private static List<Double> powers(List<Rated> cells) {
        return cells.stream()
                .flatMap(cell -> cell.judged() instanceof Judged.Counts counts
                        ? Stream.of(counts.reading().powerDensity().value())
                        : Stream.empty())
                .toList();
    }

    private static Optional<SideFiguresAnswer.Kept> kept(List<Rated> cells, Rating rating) {
        return cells.stream()
                .flatMap(cell -> rating.retention(cell.judged().cell()).stream())
                .max(Comparator.comparingDouble(Kept::share).thenComparing(Kept::cellId))
                .map(kept -> new SideFiguresAnswer.Kept(
                        kept.cellId(), kept.share(), kept.age().toMinutes() / MINUTES_PER_HOUR));
    }
}
