package org.berrywatt.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The law of propagation of uncertainty of first order for independent inputs: u(y)² = Σ (∂f/∂xᵢ u(xᵢ))² (JCGM 100:2008,
 * 5.1.2, equation 10).
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
     * @param inputs independent inputs
     * @param model the result as a function of the inputs' values, in their order; it must not keep or change the array
     * @throws ArithmeticException when the model has no finite value at the inputs or close by
     */
    public static Budget evaluate(List<Input> inputs, ToDoubleFunction<double[]> model) {
        double[] values = inputs.stream().mapToDouble(Input::value).toArray();
        double[] sensitivities = IntStream.range(0, values.length)
                .mapToDouble(i -> sensitivity(inputs.get(i), values, i, model))
                .toArray();
        return budget(inputs, finite(model.applyAsDouble(values.clone()), "at the inputs"), sensitivities);
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

    private static Budget budget(List<Input> inputs, double value, double[] sensitivities) {
        double variance = IntStream.range(0, sensitivities.length)
                .mapToDouble(i -> variance(inputs.get(i), sensitivities[i]))
                .sum();
        List<Contribution> contributions = IntStream.range(0, sensitivities.length)
                .mapToObj(i -> contribution(inputs.get(i), sensitivities[i], variance))
                .toList();
        return new Budget(value, Math.sqrt(variance), contributions);
    }

    private static Contribution contribution(Input input, double sensitivity, double total) {
        return new Contribution(input, sensitivity, total > 0 ? variance(input, sensitivity) / total : 0);
    }

    private static double variance(Input input, double sensitivity) {
        return Math.pow(sensitivity * input.standardUncertainty(), 2);
    }

    private static double finite(double value, String where) {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException("the model has no finite value " + where);
        }
        return value;
    }
}
