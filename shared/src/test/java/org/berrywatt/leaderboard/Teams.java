package org.berrywatt.leaderboard;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.normalise.SharedUncertainty;
import org.berrywatt.uncertainty.Estimate;

/** Teams for tests, named by letters. */
final class Teams {
    private Teams() {}

    static TeamCells team(String name, CellEntry... cells) {
        return new TeamCells(id(name), List.of(cells));
    }

    /** A team whose cells have these power densities, each known to 1 %. */
    static TeamCells team(String name, double... powersWm2) {
        var cells = Arrays.stream(powersWm2)
                .mapToObj(power -> counts(power, 0.01 * power))
                .toArray(CellEntry[]::new);
        return team(name, cells);
    }

    static CellEntry counts(double powerWm2, double standardUncertainty, SharedUncertainty... shared) {
        return new CellEntry.Counts(
                id("cell " + powerWm2 + " ± " + standardUncertainty),
                new Estimate(powerWm2, standardUncertainty),
                Stream.of(shared).toList());
    }

    static CellEntry failed() {
        return new CellEntry.Failed(id("failed"));
    }

    static CellEntry waiting() {
        return new CellEntry.Waiting(id("waiting"));
    }

    static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
