package org.berrywatt.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Propagation of distributions by Monte Carlo (JCGM 101:2008, clause 7): every trial draws a value of each input from its
 * distribution and asks the model for the result.
 *
 * <p>Inputs of one cause are drawn from the cause's stream, so that results which share it move together, trial by trial. All
 * others are drawn from a stream of their own, named {@code owner/input}.
 */
public final class MonteCarlo {
    private MonteCarlo() {}

    /**
     * The distribution of a result.
     *
     * @param inputs independent but for shared causes; names differ within one result
     * @param model the result as a function of the inputs' values, in their order; it must not keep or change the array
     * @param owner names the result, such as a cell's id
     * @throws ArithmeticException when the model has no finite value in some trial
     */
    public static Sample evaluate(
            List<Input> inputs, ToDoubleFunction<double[]> model, Deviates deviates, String owner) {
        return Sample.of(trials(inputs, model, deviates, owner));
    }

    /** As {@link #evaluate(List, ToDoubleFunction, Deviates, String)}, with normal inputs that are correlated. */
    public static Sample evaluate(
            List<Input> inputs,
            Correlation correlation,
            ToDoubleFunction<double[]> model,
            Deviates deviates,
            String owner) {
        double[][] draws = correlation.correlate(InputDraws.of(inputs, deviates, owner));
        return Sample.of(new Trials(inputs, draws).of(model));
    }

    /** The result in every trial, in the order of the trials; not checked for values that are not finite. */
    public static double[] trials(
            List<Input> inputs, ToDoubleFunction<double[]> model, Deviates deviates, String owner) {
        return new Trials(inputs, InputDraws.of(inputs, deviates, owner)).of(model);
    }

    /**
     * The distribution of a result from as many trials as it takes until mean, standard deviation and both ends of the
     * symmetric 95 % interval stand still within the tolerance: twice the standard deviation of each over the sequences of
     * {@value AdaptiveMonteCarlo#SEQUENCE} trials is below it (JCGM 101:2008, 7.9.4).
     *
     * @param tolerance in the unit of the result, in (0, ∞); see {@link #tolerance(double, int)}
     * @throws IllegalArgumentException when the tolerance is not in (0, ∞)
     * @throws ArithmeticException when the model has no finite value in some trial, or does not stand still within
     *     {@value AdaptiveMonteCarlo#MOST_SEQUENCES} sequences
     */
    public static Sample adaptive(List<Input> inputs, ToDoubleFunction<double[]> model, long seed, double tolerance) {
        return new AdaptiveMonteCarlo(inputs, model, seed, tolerance).run();
    }

    /**
     * Half a unit of the last significant digit of a standard uncertainty (JCGM 101:2008, 7.9.2): 0.005 for u = 0.35 shown with
     * two digits.
     *
     * @param standardUncertainty in (0, ∞)
     * @param significantDigits in [1, 15]
     */
    public static double tolerance(double standardUncertainty, int significantDigits) {
        double exponent = Math.floor(Math.log10(standardUncertainty)) - significantDigits + 1;
        return Math.pow(10, exponent) / 2;
    }
}
