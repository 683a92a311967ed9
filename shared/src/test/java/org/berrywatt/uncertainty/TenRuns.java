package org.berrywatt.uncertainty;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The worked examples of JCGM 101:2008 by ten runs of a million trials. An end of the 95 % interval of one run has a standard
 * error of √(p (1 - p)/M)/f, f the density there: 0.005 where u is 2, so that one run cannot promise the second decimal; the
 * mean half-width of ten has 0.0012.
 */
final class TenRuns {
    private static final int RUNS = 10;
    private static final int TRIALS = 1_000_000;

    private TenRuns() {}

    /** Half the width of the symmetric 95 % interval of the sum of four inputs, 9.2. */
    static double halfInterval(IntFunction<Input> input) {
        var inputs = IntStream.range(0, 4).mapToObj(input).toList();
        return mean(
                inputs,
                x -> x[0] + x[1] + x[2] + x[3],
                sample -> sample.symmetricInterval(0.95).width() / 2);
    }

    /** Standard uncertainty of the calibrated weight in mg, 9.3. */
    static double massUncertaintyMg() {
        return mean(MassCalibration.INPUTS, MassCalibration::deviationMg, Sample::standardDeviation);
    }

    private static double mean(List<Input> inputs, ToDoubleFunction<double[]> model, ToDoubleFunction<Sample> figure) {
        return IntStream.range(0, RUNS)
                .mapToObj(run -> MonteCarlo.evaluate(inputs, model, new Deviates(2008 + run, TRIALS), "result"))
                .mapToDouble(figure)
                .average()
                .orElseThrow();
    }
}
