package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Deals recipes to teams. */
public final class Allocation {

    private static final long OF_ORDER = 0x9E3779B97F4A7C15L;

    private Allocation() {}

    /**
     * A plan in team blocks as balanced as was found, with teams and the order within each team drawn by chance.
     *
     * @throws PlanRefused for an order from which no plan follows
     */
    public static Design of(Order order) {
        var recipes = order.recipes();
        var sizes = Collections.nCopies(order.teams(), order.cellsPerTeam());
        var design = CoordinateExchange.search(order.factors(), sizes, recipes, order.seed());
        return shuffled(design, RandomSource.XO_SHI_RO_256_PP.create(order.seed() ^ OF_ORDER));
    }

    /**
     * The recipe of a class's standard cell: the first levels, as far as they may be built together.
     *
     * @throws PlanRefused for an order from which no plan follows
     */
    public static List<Integer> standard(Order order) {
        return order.recipes().get(0);
    }

    private static Design shuffled(Design design, UniformRandomProvider random) {
        var teams = Shuffle.of(IntStream.range(0, design.blocks()).boxed().toList(), random);
        var runs = new ArrayList<Run>();
        Shuffle.of(design.runs(), random).forEach(run -> runs.add(new Run(teams.get(run.block()), run.levels())));
        runs.sort(Comparator.comparingInt(Run::block));
        return new Design(design.factors(), List.copyOf(runs));
    }
}
