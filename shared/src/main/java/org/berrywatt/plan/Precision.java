package org.berrywatt.plan;

import java.util.stream.IntStream;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * How precisely a design tells main effects once teams' own levels are allowed for. The information of a factor is what is
 * left of its own after the other factors took theirs (the Schur complement), in the coding of {@link Coding}.
 */
final class Precision {

    /** Information below this share of the ideal counts as none: sums of a few hundred rounded numbers. */
    private static final double NOTHING = 1e-9;

    private final Design design;
    private final Coding coding;
    private final RealMatrix information;

    Precision(Design design) {
        this.design = design;
        this.coding = new Coding(design.factors());
        this.information = Columns.information(Columns.withinTeams(design, Columns.effects(design, coding)));
    }

    /** D-efficiency of the main effects within teams, in [0, 1]; 1 is a design that is balanced in every respect. */
    double efficiency() {
        return efficiency(information);
    }

    /** The same of one factor. */
    double efficiency(int factor) {
        return efficiency(of(factor));
    }

    /** Information of one factor's contrasts, allowing for teams and the other factors. */
    RealMatrix of(int factor) {
        int from = coding.offset(factor);
        int[] own = range(from, from + coding.width(factor));
        int[] others = except(from, coding.width(factor));
        var ownPart = information.getSubMatrix(own, own);
        if (others.length == 0) {
            return ownPart;
        }
        var shared = information.getSubMatrix(others, own);
        return ownPart.subtract(shared.transposeMultiply(solver(others).solve(shared)));
    }

    private DecompositionSolver solver(int[] others) {
        // least squares of least norm: the others may tell the same thing twice
        return new SingularValueDecomposition(information.getSubMatrix(others, others)).getSolver();
    }

    private double efficiency(RealMatrix part) {
        double logarithms = 0;
        for (double value : new EigenDecompositionSymmetric(part).getEigenvalues()) {
            if (!(value > NOTHING * design.runs().size())) {
                return 0;
            }
            logarithms += Math.log(value / design.runs().size());
        }
        return Math.exp(logarithms / part.getRowDimension());
    }

    private static int[] range(int from, int to) {
        return IntStream.range(from, to).toArray();
    }

    private int[] except(int from, int width) {
        return IntStream.range(0, coding.columns())
                .filter(column -> column < from || column >= from + width)
                .toArray();
    }
}
