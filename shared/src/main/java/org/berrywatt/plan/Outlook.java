package org.berrywatt.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.jspecify.annotations.Nullable;

/** Looks what a design tells about each factor. */
final class Outlook {

    /** As many teams and cells as a school may have; beyond, more is no advice. */
    private static final int MOST_TEAMS = 24;

    private static final int MOST_CELLS_PER_TEAM = 12;

    private final Design design;
    private final Wish wish;
    private final Precision precision;
    private final Aliases aliases;

    Outlook(Design design, Wish wish, Precision precision) {
        this.design = design;
        this.wish = wish;
        this.precision = precision;
        this.aliases = new Aliases(design);
    }

    FactorFigures of(int factor) {
        double strength = precision.efficiency(factor) > 0 ? weakest(factor) : 0;
        boolean tells = strength > 0 && design.spareCells() > 0;
        boolean wanting = strength > 0 && !(tells && power(factor, strength, 1, design.spareCells()) >= Power.WANTED);
        return new FactorFigures(
                design.factors().get(factor),
                counts(factor),
                teamsComparing(factor),
                precision.efficiency(factor),
                tells ? power(factor, strength, 1, design.spareCells()) : null,
                tells ? smallest(factor, strength) : null,
                wanting ? cellsPerTeamNeeded(factor, strength) : null,
                wanting ? teamsNeeded(factor, strength) : null,
                aliases.of(factor));
    }

    /** Noncentrality of a step of one standard deviation between the two levels that are told apart worst. */
    private double weakest(int factor) {
        int size = design.factors().get(factor).size();
        return IntStream.range(0, size)
                .boxed()
                .flatMap(one -> IntStream.range(one + 1, size).mapToObj(other -> between(factor, one, other)))
                .mapToDouble(strength -> strength)
                .min()
                .orElseThrow();
    }

    private double between(int factor, int one, int other) {
        double[][] contrasts = Coding.contrasts(design.factors().get(factor).size());
        double[] step = new double[contrasts[0].length];
        for (int column = 0; column < step.length; column++) {
            step[column] = (contrasts[other][column] - contrasts[one][column]) / 2 / contrasts.length;
        }
        var coefficients = MatrixUtils.createRealVector(step);
        return precision.of(factor).operate(coefficients).dotProduct(coefficients);
    }

    private double power(int factor, double strength, double times, int spare) {
        return Power.of(differences(factor), spare, wish.noncentrality(strength * times));
    }

    private double smallest(int factor, double strength) {
        return wish.ratioOf(Power.wantedNoncentrality(differences(factor), design.spareCells()), strength);
    }

    private @Nullable Integer cellsPerTeamNeeded(int factor, double strength) {
        int teams = design.blocks();
        return IntStream.rangeClosed(cellsPerTeam() + 1, MOST_CELLS_PER_TEAM)
                .filter(cells -> finds(factor, strength, teams * cells, teams))
                .boxed()
                .findFirst()
                .orElse(null);
    }

    private @Nullable Integer teamsNeeded(int factor, double strength) {
        return IntStream.rangeClosed(design.blocks() + 1, MOST_TEAMS)
                .filter(teams -> finds(factor, strength, teams * cellsPerTeam(), teams))
                .boxed()
                .findFirst()
                .orElse(null);
    }

    private boolean finds(int factor, double strength, int cells, int teams) {
        int spare = cells - teams - design.parameters();
        double times = (double) cells / design.runs().size();
        return spare > 0 && power(factor, strength, times, spare) >= Power.WANTED;
    }

    private int cellsPerTeam() {
        return (int) Math.ceil((double) design.runs().size() / design.blocks());
    }

    private int differences(int factor) {
        return design.factors().get(factor).size() - 1;
    }

    private List<Integer> counts(int factor) {
        return IntStream.range(0, design.factors().get(factor).size())
                .map(level -> (int) design.runs().stream()
                        .filter(run -> run.levels().get(factor) == level)
                        .count())
                .boxed()
                .toList();
    }

    private int teamsComparing(int factor) {
        return (int) design.runs().stream()
                .map(Run::block)
                .distinct()
                .filter(block -> design.runs().stream()
                                .filter(run -> run.block() == block)
                                .map(run -> run.levels().get(factor))
                                .distinct()
                                .count()
                        > 1)
                .count();
    }
}
