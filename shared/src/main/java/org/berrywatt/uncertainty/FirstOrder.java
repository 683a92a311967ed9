package org.berrywatt.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The law of propagation of uncertainty of first order: u(y)² = Σᵢⱼ rᵢⱼ cᵢ u(xᵢ) cⱼ u(xⱼ) with cᵢ = ∂f/∂xᵢ (JCGM 100:2008,
 * 5.1.2 and 5.2.2). Inputs of one cause move together (r = 1), all others apart (r = 0), unless correlations are given.
 *
 * <p>Sensitivities are central differences over a hundredth of each input's standard uncertainty: near enough to be the
 * derivative even where the input is poorly known, wide enough to stand clear of rounding. An input without uncertainty is
 * moved by its own size times the cube root of the machine precision.
 */
public final class FirstOrder {

    private static final double PART_OF_UNCERTAINTY = 0.01;
    private static final double PART_OF_VALUE = Math.cbrt(Math.ulp(1.0));

    private FirstOrder() {}

    /**
     * Evaluates a model.
     *
     * @param inputs independent but for shared causes
     * @param model the result as a function of the inputs' values, in their order; it must not keep or change the array
     * @throws ArithmeticException when the model has no finite value at the inputs or close by
     */
    public static Budget evaluate(List<Input> inputs, ToDoubleFunction<double[]> model) {
        return evaluate(inputs, Correlation.byCause(inputs), model);
    }

    /**
     * Evaluates a model of correlated inputs.
     *
     * @param inputs whatever their causes, as correlated as given
     * @throws ArithmeticException when the model has no finite value at the inputs or close by
     */
    public static Budget evaluate(List<Input> inputs, Correlation correlation, ToDoubleFunction<double[]> model) {
        double[] values = inputs.stream().mapToDouble(Input::value).toArray();
        double[] sensitivities = IntStream.range(0, values.length)
                .mapToDouble(i -> sensitivity(inputs.get(i), values, i, model))
                .toArray();
        double value = finite(model.applyAsDouble(values.clone()), "at the inputs");
        return budget(inputs, correlation, value, sensitivities);
    }

    private static double sensitivity(Input input, double[] values, int i, ToDoubleFunction<double[]> model) {
        double step = step(input);
        double[] above = values.clone();
        double[] below = values.clone();
        above[i] += step;
        below[i] -= step;
        double change = model.applyAsDouble(above) - model.applyAsDouble(below);
        return finite(change / (above[i] - below[i]), "near " + input.name() + " = " + input.value());
    }

    private static double step(Input input) {
        double step = PART_OF_UNCERTAINTY * input.standardUncertainty();
        return step > Math.ulp(input.value())
                ? step
                : PART_OF_VALUE * Math.max(Math.abs(input.value()), Double.MIN_NORMAL);
    }

    private static Budget budget(List<Input> inputs, Correlation correlation, double value, double[] sensitivities) {
        double[] parts = IntStream.range(0, sensitivities.length)
                .mapToDouble(i -> sensitivities[i] * inputs.get(i).standardUncertainty())
                .toArray();
        double variance = Math.max(0, correlation.variance(parts));
        List<Contribution> contributions = IntStream.range(0, parts.length)
                .mapToObj(i -> new Contribution(
                        inputs.get(i),
                        sensitivities[i],
                        variance > 0 ? parts[i] * correlation.with(i, parts) / variance : 0))
                .toList();
        return new Budget(value, Math.sqrt(variance), contributions);
    }

    private static double finite(double value, String where) {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException("the model has no finite value " + where);
        }
        return value;
    }
}
