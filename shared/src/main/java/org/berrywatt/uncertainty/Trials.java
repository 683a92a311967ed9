package org.berrywatt.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Inputs with their draws. */
final class Trials {
    private final double[] values;
    private final double[] uncertainties;
    private final double[][] draws;

    /** @param draws for each input, for each trial */
    Trials(List<Input> inputs, double[][] draws) {
        this.values = inputs.stream().mapToDouble(Input::value).toArray();
        this.uncertainties =
                inputs.stream().mapToDouble(Input::standardUncertainty).toArray();
        this.draws = draws;
    }

    double[] of(ToDoubleFunction<double[]> model) {
        double[] results = new double[draws.length == 0 ? 0 : draws[0].length];
        double[] drawn = new double[values.length];
        for (int trial = 0; trial < results.length; trial++) {
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = values[i] + uncertainties[i] * draws[i][trial];
            }
            results[trial] = model.applyAsDouble(drawn);
        }
        return results;
    }
}
