package org.berrywatt.leaderboard;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Shape;

/** Teams for tests, named by letters. */
final class Teams {
    static final int TRIALS = 10_000;
    private static final Deviates DEVIATES = new Deviates(1, TRIALS);

    private Teams() {}

    static TeamCells team(String name, CellEntry... cells) {
        return new TeamCells(id(name), List.of(cells));
    }

    /** A team whose cells have these results, each known to 1 % on its own. */
    static TeamCells team(String name, double... results) {
        var cells = Arrays.stream(results)
                .mapToObj(result -> counts(name, result, 0.01 * result))
                .toArray(CellEntry[]::new);
        return team(name, cells);
    }

    static CellEntry.Counts counts(String stream, double result, double standardUncertainty) {
        return counts(result, normal(stream + result, result, standardUncertainty), Verification.NOT_READ_AGAIN);
    }

    static CellEntry.Counts counts(double result, Trials trials, Verification verification) {
        return new CellEntry.Counts(id("cell " + result + trials.hashCode()), result, trials, verification);
    }

    static CellEntry.Counts certain(double result) {
        return counts(result, Trials.certain(result, TRIALS), Verification.NOT_READ_AGAIN);
    }

    /** Normal trials; equal streams are one cause. */
    static Trials normal(String stream, double result, double standardUncertainty) {
        double[] deviates = DEVIATES.of(stream, Shape.NORMAL, Double.POSITIVE_INFINITY);
        return Trials.of(Arrays.stream(deviates)
                .map(deviate -> Math.max(0, result + standardUncertainty * deviate))
                .toArray());
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
