package org.berrywatt.calibration;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.TeamCells;

/**
 * A team of a simulated day.
 *
 * @param failed cells that broke while they were made
 */
record DayTeam(UUID id, List<ReadCell> cells, int failed) {

    TeamCells teamCells() {
        var broken = IntStream.range(0, failed)
                .mapToObj(i -> new CellEntry.Failed(new UUID(id.getMostSignificantBits(), -1 - i)));
        return new TeamCells(
                id,
                Stream.<CellEntry>concat(cells.stream().map(ReadCell::entry), broken)
                        .toList());
    }

    /** Median of the true power densities of all declared cells, failures as 0. */
    double trueFigureWm2() {
        double[] ascending = Stream.concat(
                        cells.stream().map(ReadCell::truthWm2),
                        IntStream.range(0, failed).mapToObj(i -> 0.0))
                .mapToDouble(value -> value)
                .sorted()
                .toArray();
        return (ascending[(ascending.length - 1) / 2] + ascending[ascending.length / 2]) / 2;
    }
}
