package org.berrywatt.findings;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A cell that counts and whose level is recorded: one dot of the comparison. */
record Worked(String team, String level, @Nullable Double number, double powerWm2) {

    static List<Worked> among(List<Observation> cells) {
        return cells.stream()
                .filter(cell -> cell.recorded() && cell.standing() == Standing.COUNTS)
                .map(Worked::of)
                .toList();
    }

    private static Worked of(Observation cell) {
        return new Worked(
                cell.team(),
                Objects.requireNonNull(cell.level()),
                cell.number(),
                Objects.requireNonNull(cell.powerDensityWm2()));
    }
}
