package org.berrywatt.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Runs sequences of trials until the result stands still (JCGM 101:2008, 7.9.4). */
final class AdaptiveMonteCarlo {
    static final int SEQUENCE = 10_000;
    static final int MOST_SEQUENCES = 500;
    private static final double PROBABILITY = 0.95;

    private final List<Input> inputs;
    private final ToDoubleFunction<double[]> model;
    private final long seed;
    private final double tolerance;
    private final List<double[]> sequences = new ArrayList<>();
    private final List<double[]> figures = new ArrayList<>();

    AdaptiveMonteCarlo(List<Input> inputs, ToDoubleFunction<double[]> model, long seed, double tolerance) {
        if (!(tolerance > 0 && tolerance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("tolerance must lie in (0, infinity), not " + tolerance);
        }
        this.inputs = inputs;
        this.model = model;
        this.seed = seed;
        this.tolerance = tolerance;
    }

    Sample run() {
        draw();
        do {
            draw();
        } while (!standsStill() && mayGoOn());
        return Sample.of(sequences.stream().flatMapToDouble(Arrays::stream).toArray());
    }

    private void draw() {
        var deviates = new Deviates(seed + sequences.size(), SEQUENCE);
        double[] trials = MonteCarlo.trials(inputs, model, deviates, "adaptive");
        var sample = Sample.of(trials);
        var interval = sample.symmetricInterval(PROBABILITY);
        sequences.add(trials);
        figures.add(new double[] {sample.mean(), sample.standardDeviation(), interval.low(), interval.high()});
    }

    private boolean standsStill() {
        for (int i = 0; i < figures.get(0).length; i++) {
            if (!(2 * standardDeviationOfMean(i) < tolerance)) {
                return false;
            }
        }
        return true;
    }

    private double standardDeviationOfMean(int figure) {
        double[] values = figures.stream().mapToDouble(it -> it[figure]).toArray();
        return Moments.of(values).standardDeviation() / Math.sqrt(values.length);
    }

    private boolean mayGoOn() {
        if (sequences.size() < MOST_SEQUENCES) {
            return true;
        }
        throw new ArithmeticException("the result does not stand still within " + tolerance + " after "
                + (long) MOST_SEQUENCES * SEQUENCE + " trials; allow a larger tolerance or fewer digits");
    }
}
