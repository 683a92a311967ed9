package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Searches a D-optimal design for main effects in given blocks by coordinate exchange: from a random start, one level of
 * one cell at a time is changed for the better until nothing betters it; the best of many starts stays, a published array among
 * them where one fits. Source: R. K. Meyer and C. J. Nachtsheim, Technometrics 37 (1995) 60-69. What is bettered is told by
 * {@link Climb}.
 */
public final class CoordinateExchange {

    private static final int MOST_STARTS = 60;
    private static final double STEPS_TO_SPEND = 3e8;

    private CoordinateExchange() {}

    /**
     * The best design found; the same for the same seed.
     *
     * @param factors one or more
     * @param blockSizes number of cells of each block, each 1 or more
     * @param recipes the recipes that may be built, levels by factor; one or more
     */
    public static Design search(
            List<Factor> factors, List<Integer> blockSizes, List<List<Integer>> recipes, long seed) {
        var random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        var byChance = IntStream.range(0, starts(factors, blockSizes))
                .mapToObj(start -> climb(factors, byChance(blockSizes, recipes, random), recipes));
        var known = EighteenRuns.in(factors, blockSizes, recipes).map(runs -> climb(factors, runs, recipes)).stream();
        return Stream.concat(byChance, known)
                .max(Comparator.comparingDouble(Climb::height))
                .orElseThrow()
                .design();
    }

    private static List<Run> byChance(
            List<Integer> blockSizes, List<List<Integer>> recipes, UniformRandomProvider random) {
        var runs = new ArrayList<Run>();
        for (int block = 0; block < blockSizes.size(); block++) {
            for (int i = 0; i < blockSizes.get(block); i++) {
                runs.add(new Run(block, recipes.get(random.nextInt(recipes.size()))));
            }
        }
        return runs;
    }

    private static Climb climb(List<Factor> factors, List<Run> start, List<List<Integer>> recipes) {
        var climb = new Climb(new Design(factors, start), recipes);
        climb.toTheTop();
        return climb;
    }

    /** As many starts as a second or so allows: one step costs about the cube of the number of columns. */
    private static int starts(List<Factor> factors, List<Integer> blockSizes) {
        int cells = blockSizes.stream().mapToInt(size -> size).sum();
        int levels = factors.stream().mapToInt(Factor::size).sum();
        double columns = levels - factors.size() + 3.0;
        double steps = 10 * cells * levels * columns * columns * columns;
        return (int) Math.max(1, Math.min(MOST_STARTS, STEPS_TO_SPEND / steps));
    }
}
