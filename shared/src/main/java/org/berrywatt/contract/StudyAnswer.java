package org.berrywatt.contract;

import java.util.List;
import org.berrywatt.contract.ParameterAnswer.Span;
import org.jspecify.annotations.Nullable;

/**
 * All that a number of cells says about its build parameters.
 *
 * @param joint all parameters in one model; null when none fits
 * @param confounding every two parameters, closest first
 * @param aliasSets parameters that always changed together
 * @param next which cells to build next
 */
public record StudyAnswer(
        List<ParameterAnswer> parameters,
        @Nullable Joint joint,
        List<Pair> confounding,
        List<List<String>> aliasSets,
        List<Remark> next) {

    /**
     * Log performance by parameters and team, REML.
     *
     * @param left parameters that stayed outside
     * @param teamDeviation standard deviation between teams, natural logarithms
     * @param cellDeviation standard deviation between cells of one team
     */
    public record Joint(
            int n, int teams, List<Term> terms, List<String> left, double teamDeviation, double cellDeviation) {}

    /**
     * A parameter in the model.
     *
     * @param holm p corrected for the number of terms
     * @param inflation how many times wider the others make its interval; null when it cannot be told
     */
    public record Term(
            String parameter,
            double f,
            int dfBetween,
            int dfWithin,
            double p,
            double holm,
            @Nullable Double inflation,
            List<Mean> means) {}

    /** Performance at a level with all else at its mean. */
    public record Mean(String level, double value, Span interval) {}

    /**
     * Two parameters.
     *
     * @param cramersV in [0, 1]
     * @param firstTold differences of the first that can be told from the second; 0: none
     */
    public record Pair(String first, String second, double cramersV, int firstTold, int secondTold) {}
}
