package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One ascent of a search. The height is the logarithm of the determinant of the information within teams, and, a twentieth
 * of it, of the information about the mean of all cells: among designs that tell the same within teams, the one that gives
 * each level to equally many cells wins.
 */
final class Climb {

    private static final double SHARE_OF_BALANCE = 0.05;
    private static final double STEP = 1e-7;

    /** Up to this many recipes a cell tries them all, which contains every change of one level. */
    private static final int FEW_RECIPES = 64;

    private final List<Factor> factors;
    private final List<List<Integer>> recipes;
    private final Set<List<Integer>> allowed;
    private final List<Run> runs;
    private final Coding coding;
    private final RunningInformation within;
    private final RunningInformation overall;
    private double height;

    Climb(Design start, List<List<Integer>> recipes) {
        this.factors = start.factors();
        this.recipes = recipes;
        this.allowed = Set.copyOf(recipes);
        this.runs = new ArrayList<>(start.runs());
        this.coding = new Coding(factors);
        this.within = new RunningInformation(coding.columns());
        this.overall = new RunningInformation(coding.columns());
        runs.forEach(run -> add(run, 1));
        height = look();
    }

    double height() {
        return height;
    }

    Design design() {
        return new Design(factors, List.copyOf(runs));
    }

    void toTheTop() {
        boolean climbed = true;
        while (climbed) {
            climbed = false;
            for (int run = 0; run < runs.size(); run++) {
                climbed |= better(run);
            }
        }
    }

    private boolean better(int place) {
        double before = height;
        var candidates = recipes.size() <= FEW_RECIPES ? recipes.stream() : neighbours(runs.get(place));
        candidates.toList().forEach(levels -> tryOut(place, levels));
        return height > before + STEP;
    }

    private Stream<List<Integer>> neighbours(Run run) {
        return IntStream.range(0, factors.size())
                .boxed()
                .flatMap(factor -> IntStream.range(0, factors.get(factor).size())
                        .mapToObj(level -> run.with(factor, level).levels()))
                .filter(allowed::contains);
    }

    private void tryOut(int place, List<Integer> levels) {
        var present = runs.get(place);
        if (present.levels().equals(levels)) {
            return;
        }
        var changed = new Run(present.block(), levels);
        add(present, -1);
        add(changed, 1);
        double seen = look();
        if (seen > height + STEP) {
            runs.set(place, changed);
            height = seen;
        } else {
            add(changed, -1);
            add(present, 1);
        }
    }

    private void add(Run run, int sign) {
        double[] row = coding.row(run.levels());
        within.add(run.block(), row, sign);
        overall.add(0, row, sign);
    }

    private double look() {
        return within.logDeterminant() + SHARE_OF_BALANCE * overall.logDeterminant();
    }
}
