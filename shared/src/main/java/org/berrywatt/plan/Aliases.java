package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * What each factor is mixed up with: teams, other factors, and how two other factors act together. Teams are compared over
 * all cells; the others within teams. The measure is the first canonical correlation; for two-level factors it is the size
 * of the usual alias coefficient. Source: D. C. Montgomery, Design and Analysis of Experiments, chapter 8 (aliases); H.
 * Hotelling, Biometrika 28 (1936) 321-377 (canonical correlation).
 */
final class Aliases {

    /** A correlation below this is not worth a teacher's while: a tenth of the variance. Common practice, no source. */
    private static final double WORTH_TELLING = 0.3;

    private static final double NOTHING = 1e-9;

    private final Design design;
    private final Coding coding;
    private final double[][] effects;

    Aliases(Design design) {
        this.design = design;
        this.coding = new Coding(design.factors());
        this.effects = Columns.effects(design, coding);
    }

    /** Every alias worth telling, the strongest first. */
    List<Alias> of(int factor) {
        var aliases = new ArrayList<Alias>();
        aliases.add(new Alias(List.of(), withTeams(factor)));
        others(factor).forEach(other -> aliases.add(alias(factor, own(other), other)));
        others(factor)
                .forEach(one -> others(factor)
                        .filter(other -> other > one)
                        .forEach(other ->
                                aliases.add(alias(factor, Columns.products(own(one), own(other)), one, other))));
        return aliases.stream()
                .filter(alias -> alias.correlation() > WORTH_TELLING)
                .sorted((a, b) -> Double.compare(b.correlation(), a.correlation()))
                .toList();
    }

    private double withTeams(int factor) {
        return correlation(Columns.aboutTheMean(own(factor)), Columns.aboutTheMean(Columns.teams(design)));
    }

    private Alias alias(int factor, double[][] columns, int... with) {
        var keys =
                Arrays.stream(with).mapToObj(i -> design.factors().get(i).key()).toList();
        return new Alias(
                keys, correlation(Columns.withinTeams(design, own(factor)), Columns.withinTeams(design, columns)));
    }

    private double[][] own(int factor) {
        return Columns.part(effects, coding.offset(factor), coding.width(factor));
    }

    private IntStream others(int factor) {
        return IntStream.range(0, design.factors().size()).filter(other -> other != factor);
    }

    private static double correlation(double[][] one, double[][] other) {
        return basis(one)
                .flatMap(a -> basis(other).map(b -> new SingularValueDecomposition(a.transposeMultiply(b)).getNorm()))
                .map(norm -> Math.min(1, norm))
                .orElse(0.0);
    }

    /** Orthonormal columns that span the same; empty for columns of zeros. */
    private static Optional<RealMatrix> basis(double[][] columns) {
        var parts = new SingularValueDecomposition(MatrixUtils.createRealMatrix(columns));
        int rank = (int) Arrays.stream(parts.getSingularValues())
                .filter(value -> value > NOTHING * columns.length)
                .count();
        return Optional.of(rank)
                .filter(some -> some > 0)
                .map(some -> parts.getU().getSubMatrix(0, columns.length - 1, 0, some - 1));
    }
}
