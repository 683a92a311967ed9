package org.berrywatt.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.berrywatt.uncertainty.Estimate;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * x(t) = x∞ + a exp(-t/τ) through a cell's readings by weighted least squares, started from several τ.
 *
 * @param start instant of the first reading, t = 0
 * @param settled x∞ with its standard uncertainty
 * @param amplitude a = x0 - x∞
 * @param hours τ
 */
record SettlingFit(Instant start, Estimate settled, double amplitude, double hours) {
    private static final double NS_PER_HOUR = 3.6e12;
    /** Relative uncertainty given to readings that come without one. */
    private static final double LEAST_RELATIVE = 1e-3;
    /** An end that is known no better is a guess; so is one beyond three times the time seen. */
    private static final double SHARPEST = 0.2;

    private static final double LONGEST_IN_SPANS = 3;
    private static final double[] STARTS_IN_SPANS = {0.1, 0.3, 1};

    /** The best fit; empty when the readings do not tell where they are heading. */
    static Optional<SettlingFit> of(List<TimedValue> sorted) {
        var start = sorted.get(0).at();
        var span = hours(start, sorted.get(sorted.size() - 1).at());
        if (!(span > 0)) {
            return Optional.empty();
        }
        Optional<SettlingFit> best = Optional.empty();
        var lowest = Double.POSITIVE_INFINITY;
        for (double part : STARTS_IN_SPANS) {
            var optimum = optimum(sorted, part * span);
            if (optimum.isPresent() && optimum.get().getCost() < lowest) {
                lowest = optimum.get().getCost();
                best = fit(sorted, optimum.get(), span);
            }
        }
        return best;
    }

    /** The figure at an instant. */
    double valueAt(Instant at) {
        return settled.value() - remainingAt(at);
    }

    /** What is still to come after an instant: x∞ - x, negative for a falling figure. */
    double remainingAt(Instant at) {
        return -amplitude * Math.exp(-hours(start, at) / hours);
    }

    /** How long it takes from one remaining change to a smaller one. */
    Duration timeFrom(double remaining, double limit) {
        return Duration.ofNanos(Math.round(hours * Math.log(remaining / limit) * NS_PER_HOUR));
    }

    private static Optional<Optimum> optimum(List<TimedValue> sorted, double hours) {
        var first = sorted.get(0).value().value();
        var last = sorted.get(sorted.size() - 1).value().value();
        var problem = new LeastSquaresBuilder()
                .start(new double[] {last, first - last, Math.log(hours)})
                .model(point -> values(sorted, point), point -> slopes(sorted, point))
                .target(new double[sorted.size()])
                .maxEvaluations(200)
                .maxIterations(200)
                .build();
        try {
            return Optional.of(new LevenbergMarquardtOptimizer().optimize(problem));
        } catch (MathRuntimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<SettlingFit> fit(List<TimedValue> sorted, Optimum optimum, double span) {
        var point = optimum.getPoint().toArray();
        var hours = Math.exp(point[2]);
        var u = uncertainty(sorted.size(), optimum);
        var told = hours <= LONGEST_IN_SPANS * span && u <= SHARPEST * Math.abs(point[0]);
        return told
                ? Optional.of(new SettlingFit(sorted.get(0).at(), new Estimate(point[0], u), point[1], hours))
                : Optional.empty();
    }

    /** Of x∞, never below what the scatter shows; NaN where the matrix is singular. */
    private static double uncertainty(int readings, Optimum optimum) {
        var scatter = readings > 3 ? optimum.getCost() * optimum.getCost() / (readings - 3) : 0;
        try {
            return optimum.getSigma(1e-14).getEntry(0) * Math.sqrt(Math.max(1, scatter));
        } catch (MathRuntimeException e) {
            return Double.NaN;
        }
    }

    private static double[] values(List<TimedValue> sorted, double[] point) {
        return sorted.stream()
                .mapToDouble(it -> (point[0]
                                + point[1] * decay(sorted, it, point)
                                - it.value().value())
                        / sigma(it))
                .toArray();
    }

    private static double[][] slopes(List<TimedValue> sorted, double[] point) {
        return IntStream.range(0, sorted.size())
                .mapToObj(i -> slope(sorted, sorted.get(i), point))
                .toArray(double[][]::new);
    }

    private static double[] slope(List<TimedValue> sorted, TimedValue reading, double[] point) {
        var decay = decay(sorted, reading, point);
        var timeConstants = hours(sorted.get(0).at(), reading.at()) / Math.exp(point[2]);
        var sigma = sigma(reading);
        return new double[] {1 / sigma, decay / sigma, point[1] * decay * timeConstants / sigma};
    }

    private static double decay(List<TimedValue> sorted, TimedValue reading, double[] point) {
        return Math.exp(-hours(sorted.get(0).at(), reading.at()) / Math.exp(point[2]));
    }

    private static double sigma(TimedValue reading) {
        var least = LEAST_RELATIVE * Math.abs(reading.value().value()) + Double.MIN_NORMAL;
        return Math.max(least, reading.value().standardUncertainty());
    }

    private static double hours(Instant from, Instant to) {
        return Duration.between(from, to).toNanos() / NS_PER_HOUR;
    }
}
