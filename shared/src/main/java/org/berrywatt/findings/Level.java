package org.berrywatt.findings;

import java.util.List;
import java.util.OptionalDouble;
import org.berrywatt.statistics.Quantiles;
import org.jspecify.annotations.Nullable;

/**
 * The cells that share a level of a build parameter. Yield and power stand side by side, since a median of working cells
 * alone flatters a recipe that breaks most of its cells.
 *
 * @param key key of the level, or the number as text
 * @param number the number in the parameter's base unit; null for sorts
 * @param made cells started, in [1, infinity)
 * @param counted cells that work and have a known power, in [0, made]
 * @param failed cells that broke at a stage, in [0, made - counted]
 * @param medianWm2 median power per area of the cells that count; empty when none does
 * @param teams how many teams have a cell that counts here
 */
public record Level(
        String key, @Nullable Double number, int made, int counted, int failed, OptionalDouble medianWm2, int teams) {

    static Level of(List<Observation> cells) {
        List<Worked> worked = Worked.among(cells);
        Observation any = cells.get(0);
        return new Level(
                String.valueOf(any.level()),
                any.number(),
                cells.size(),
                worked.size(),
                (int) cells.stream()
                        .filter(c -> c.standing() == Standing.FAILED)
                        .count(),
                Quantiles.median(worked.stream().mapToDouble(Worked::powerWm2).toArray()),
                (int) worked.stream().map(Worked::team).distinct().count());
    }

    /** Share of the started cells that broke, in [0, 1]. */
    double failureShare() {
        return (double) failed / made;
    }
}
