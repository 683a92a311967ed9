package org.berrywatt.uncertainty;

import java.util.List;

/** Finds the draws of each input. */
final class InputDraws {
    private InputDraws() {}

    static double[][] of(List<Input> inputs, Deviates deviates, String owner) {
        return inputs.stream().map(input -> of(input, deviates, owner)).toArray(double[][]::new);
    }

    private static double[] of(Input input, Deviates deviates, String owner) {
        if (input.standardUncertainty() == 0) {
            return new double[deviates.trials()];
        }
        var cause = input.cause();
        return cause == null
                ? deviates.fresh(owner + "/" + input.name(), input.shape(), input.degreesOfFreedom())
                : deviates.of(cause, input.shape(), input.degreesOfFreedom());
    }
}
