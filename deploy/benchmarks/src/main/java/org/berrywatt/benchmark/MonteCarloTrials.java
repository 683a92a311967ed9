package org.berrywatt.benchmark;

import static java.util.concurrent.TimeUnit.MILLISECONDS;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Input;
import org.berrywatt.uncertainty.MonteCarlo;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** 100,000 trials of a product of 20 inputs with its shortest interval, against drawing as many normal numbers alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(MILLISECONDS)
public class MonteCarloTrials {
    private static final int TRIALS = 100_000;
    private static final int INPUTS = 20;

    private final List<Input> inputs = IntStream.range(0, INPUTS)
            .mapToObj(i -> i % 2 == 0
                    ? Input.normal("factor" + i, 1, "1", 0.05)
                    : Input.rectangular("factor" + i, 1, "1", 0.05))
            .toList();

    @Benchmark
    public double result() {
        return MonteCarlo.evaluate(inputs, MonteCarloTrials::product, new Deviates(1, TRIALS), "cell")
                .shortestInterval(0.95)
                .width();
    }

    @Benchmark
    public double drawsAlone() {
        var normal = ZigguratSampler.NormalizedGaussian.of(RandomSource.XO_SHI_RO_256_PP.create(1));
        var sum = 0.0;
        for (int i = 0; i < TRIALS * INPUTS; i++) {
            sum += normal.sample();
        }
        return sum;
    }

    private static double product(double[] factors) {
        var product = 1.0;
        for (double factor : factors) {
            product *= factor;
        }
        return product;
    }
}
