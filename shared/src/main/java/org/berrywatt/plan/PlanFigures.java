package org.berrywatt.plan;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What a plan will be able to tell.
 *
 * @param efficiency D-efficiency of the main effects within teams, in [0, 1]
 * @param cells number of cells that count
 * @param teams number of teams
 * @param spareCells cells left to tell chance; 0 or less tells nothing
 */
public record PlanFigures(double efficiency, int cells, int teams, int spareCells, List<FactorFigures> factors) {

    public static PlanFigures of(Design design, Wish wish) {
        var precision = new Precision(design);
        var outlook = new Outlook(design, wish, precision);
        return new PlanFigures(
                precision.efficiency(),
                design.runs().size(),
                design.blocks(),
                design.spareCells(),
                IntStream.range(0, design.factors().size())
                        .mapToObj(outlook::of)
                        .toList());
    }
}
