package org.berrywatt.validation;

import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.Board;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.Terms;
import org.berrywatt.leaderboard.Trials;
import org.berrywatt.leaderboard.Verification;

/** What a ranked leaderboard of 200 cells with 10,000 trials each keeps on the heap. */
final class BoardMemory {
    private static final int CELLS = 200;
    private static final int TRIALS = 10_000;
    private static final double LIMIT_MB = 64;
    private static final double BYTES_PER_MB = 1e6;

    private BoardMemory() {}

    static List<Row> rows() {
        return Stream.of(5, 1).map(BoardMemory::row).toList();
    }

    private static Row row(int cellsPerTeam) {
        var teams = CELLS / cellsPerTeam;
        return Row.atMost(
                "heap of a ranked leaderboard of 200 cells with 10,000 trials, " + teams + " teams",
                "this machine",
                LIMIT_MB,
                heldMb(cellsPerTeam),
                "MB");
    }

    private static double heldMb(int cellsPerTeam) {
        var before = usedBytes();
        var board = ranked(cellsPerTeam);
        var held = usedBytes() - before;
        if (board.standings().size() != CELLS / cellsPerTeam) {
            throw new IllegalStateException("the leaderboard was lost before it was weighed");
        }
        return held / BYTES_PER_MB;
    }

    private static Board ranked(int cellsPerTeam) {
        var random = new SplittableRandom(7);
        var teams = IntStream.range(0, CELLS / cellsPerTeam)
                .mapToObj(team -> new TeamCells(
                        new UUID(1, team),
                        Stream.generate(() -> cell(random)).limit(cellsPerTeam).toList()))
                .toList();
        var board = Board.of(teams, new Terms(Rule.usual(), cellsPerTeam, true, TRIALS));
        board.standings();
        return board;
    }

    private static CellEntry cell(SplittableRandom random) {
        var middle = Math.exp(random.nextGaussian());
        double[] drawn = DoubleStream.generate(() -> middle * Math.exp(0.1 * random.nextGaussian()))
                .limit(TRIALS)
                .toArray();
        return new CellEntry.Counts(
                new UUID(2, random.nextLong()), middle, Trials.of(drawn), Verification.NOT_READ_AGAIN);
    }

    private static long usedBytes() {
        System.gc();
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
