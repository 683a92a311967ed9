package org.berrywatt.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.plan.Allocation;
import org.berrywatt.plan.Factor;
import org.berrywatt.plan.Order;
import org.berrywatt.plan.Run;

/**
 * The teacher's plan as the server deals it, and what it takes to make it that of the cards: cards were drawn the day before, so the
 * teacher puts most cells right by hand. Three stay as dealt and are built by the cards: deviations.
 *
 * @param steps cells of the plan, each with the cell that was built for it
 */
record CardPlan(List<Step> steps) {

    static final List<Integer> BAKES_C = List.of(350, 400, 450, 500);
    static final List<String> DYES = List.of("elderberry", "blackberry", "onionSkin");
    static final long SEED = 7;
    private static final int LEFT_AS_DEALT = 3;
    private static final int CELLS = 3;
    private static final CardPlan DRAWN = dealt(SEED);

    /** Level numbers of a planned cell, and the cell that its team built for it. */
    record Step(String label, PlannedCell built, int dealtBake, int dealtDye) {

        int bake() {
            return BAKES_C.indexOf(built.bakeC());
        }

        int dye() {
            return DYES.indexOf(built.dye());
        }

        int differences() {
            return (bake() == dealtBake ? 0 : 1) + (dye() == dealtDye ? 0 : 1);
        }
    }

    /** A level put right by hand. */
    record Change(Step step, String parameter, int level) {}

    static CardPlan drawn() {
        return DRAWN;
    }

    static CardPlan dealt(long seed) {
        Order order = new Order(
                List.of(factor("bakeTemperature", BAKES_C.size()), factor("dyeSource", DYES.size())),
                Team.ALL.size(),
                CELLS,
                List.of(),
                seed);
        List<Run> runs = Allocation.of(order).runs();
        return new CardPlan(IntStream.range(0, Team.ALL.size())
                .boxed()
                .flatMap(team -> ofTeam(team, runs.subList(CELLS * team, CELLS * (team + 1))))
                .toList());
    }

    private static Factor factor(String key, int levels) {
        return new Factor(
                key, IntStream.range(0, levels).mapToObj(String::valueOf).toList());
    }

    /** The team takes the planned cell for each of its own with which the fewest levels differ. */
    private static Stream<Step> ofTeam(int team, List<Run> runs) {
        List<PlannedCell> own = Plan.cells().stream()
                .filter(cell -> cell.team().equals(Team.ALL.get(team)))
                .toList();
        return orders(CELLS).stream()
                .map(order -> IntStream.range(0, CELLS)
                        .mapToObj(i -> new Step(
                                (char) ('A' + team) + String.valueOf(i + 1),
                                own.get(order.get(i)),
                                runs.get(i).levels().get(0),
                                runs.get(i).levels().get(1)))
                        .toList())
                .min(Comparator.comparingInt(CardPlan::differences))
                .orElseThrow()
                .stream();
    }

    static int differences(List<Step> steps) {
        return steps.stream().mapToInt(Step::differences).sum();
    }

    private static List<List<Integer>> orders(int size) {
        List<List<Integer>> all = List.of(List.of());
        for (int next = 0; next < size; next++) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> order : all) {
                for (int place = 0; place <= order.size(); place++) {
                    List<Integer> more = new ArrayList<>(order);
                    more.add(place, next);
                    longer.add(more);
                }
            }
            all = longer;
        }
        return all;
    }

    /** What the teacher puts right: everything but the bake of the first few cells that differ in nothing else. */
    List<Change> changes() {
        List<Step> left = steps.stream()
                .filter(step -> step.differences() == 1 && step.bake() != step.dealtBake())
                .limit(LEFT_AS_DEALT)
                .toList();
        return steps.stream()
                .filter(step -> !left.contains(step))
                .flatMap(CardPlan::changes)
                .toList();
    }

    private static Stream<Change> changes(Step step) {
        return Stream.concat(
                step.bake() == step.dealtBake()
                        ? Stream.empty()
                        : Stream.of(new Change(step, "bakeTemperature", step.bake())),
                step.dye() == step.dealtDye() ? Stream.empty() : Stream.of(new Change(step, "dyeSource", step.dye())));
    }
}
