package org.berrywatt.contract.calculation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The uncertainty of a result, evaluated twice. Where the two differ, the model bends within the spread of its inputs, and the
 * Monte Carlo evaluation holds (JCGM 101:2008, clause 8).
 *
 * @param formula the model in symbols, the inputs as x1, x2 ...
 */
public record UncertaintyAnswer(String model, String formula, FirstOrder firstOrder, MonteCarlo monteCarlo) {

    /**
     * The law of propagation of uncertainty (JCGM 100:2008, clause 5).
     *
     * @param effectiveDegreesOfFreedom by Welch and Satterthwaite (G.4.1); null where every uncertainty is taken as known
     * @param low lower end of the 95 % interval by Student's t
     * @param high upper end
     */
    public record FirstOrder(
            double value,
            double standardUncertainty,
            @Nullable Double effectiveDegreesOfFreedom,
            double low,
            double high,
            List<Line> budget) {}

    /**
     * One input's part.
     *
     * @param sensitivity change of the result per unit of the input
     * @param contribution what the input adds to the standard uncertainty of the result
     * @param share part of the result's variance, in [0, 1]
     */
    public record Line(
            String input,
            double value,
            double standardUncertainty,
            String shape,
            double sensitivity,
            double contribution,
            double share) {}

    /**
     * Propagation of distributions (JCGM 101:2008, clause 7).
     *
     * @param low lower end of the shortest 95 % interval (7.7.4)
     * @param high upper end
     * @param symmetricLow lower end of the interval that leaves 2.5 % on either side (7.7.2)
     * @param symmetricHigh upper end
     */
    public record MonteCarlo(
            int trials,
            double mean,
            double standardDeviation,
            double low,
            double high,
            double symmetricLow,
            double symmetricHigh) {}
}
