package org.berrywatt.findings;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.berrywatt.statistics.Proportion;
import org.berrywatt.statistics.Quantiles;
import org.berrywatt.statistics.Resampling;

/**
 * The cells that share a level of a build parameter. Yield and performance stand side by side, since a median of working cells
 * alone flatters a recipe that breaks most of its cells.
 *
 * @param key key of the level, or the number as text
 * @param number the number in the parameter's unit; empty for sorts
 * @param made cells started, in [1, ∞)
 * @param counted cells that work and have a known performance, in [0, made]
 * @param failed cells that broke at a stage, in [0, made - counted]
 * @param came share that came through of the cells that count or broke, with Wilson's 95 % interval; empty while all wait
 * @param median of the cells that count; empty when none does
 * @param interval 95 % interval of the median; empty for few cells
 * @param teams how many teams have a cell that counts here
 */
public record Level(
        String key,
        OptionalDouble number,
        int made,
        int counted,
        int failed,
        Optional<Proportion> came,
        OptionalDouble median,
        Optional<MedianInterval> interval,
        int teams) {

    static Level of(Study study, Factor factor, int level, int[] cells, Resampling resampling) {
        int[] working = standing(study, cells, Standing.COUNTS);
        int failed = standing(study, cells, Standing.FAILED).length;
        double[] values = Arrays.stream(working).mapToDouble(study::performance).toArray();
        int decided = working.length + failed;
        return new Level(
                factor.levels().get(level),
                factor.number(level),
                cells.length,
                working.length,
                failed,
                decided == 0 ? Optional.empty() : Optional.of(Proportion.wilson(working.length, decided, 0.95)),
                Quantiles.median(values),
                MedianInterval.of(values, resampling),
                (int) Arrays.stream(working).map(study::team).distinct().count());
    }

    private static int[] standing(Study study, int[] cells, Standing standing) {
        return Arrays.stream(cells)
                .filter(cell -> study.standing(cell) == standing)
                .toArray();
    }

    /** Share of the started cells that broke, in [0, 1]. */
    double failureShare() {
        return (double) failed / made;
    }
}
