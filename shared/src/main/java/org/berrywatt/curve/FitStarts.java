package org.berrywatt.curve;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.hipparchus.linear.RealVector;

/**
 * Where to start a fit: a grid over ideality, series drop and shunt share, Isc and Voc taken from the sweep. Of each ideality
 * the best is kept, so that starts lie in different valleys.
 */
final class FitStarts {
    private static final double[] VOLTAGES = {0.1, 0.3, 0.5, 0.7, 0.9};
    private static final double[] SHARES = {0.003, 0.05, 0.2, 0.45, 0.8};

    private FitStarts() {}

    /** Starts by how well they fit, the best first. */
    static List<RealVector> best(List<SweepPoint> points, FitCoordinates coordinates) {
        return DoubleStream.of(VOLTAGES)
                .mapToObj(voltage -> grid(voltage)
                        .map(free -> Start.of(free, points, coordinates))
                        .min(Comparator.comparingDouble(Start::misfit))
                        .orElseThrow())
                .sorted(Comparator.comparingDouble(Start::misfit))
                .map(Start::free)
                .toList();
    }

    private static Stream<RealVector> grid(double voltage) {
        return DoubleStream.of(SHARES)
                .boxed()
                .flatMap(drop -> DoubleStream.of(SHARES).mapToObj(shunt -> FitCoordinates.at(voltage, drop, shunt)));
    }

    /** A start with the sum of squares of its misfit, to first order, which needs no solving. */
    private record Start(RealVector free, double misfit) {
        static Start of(RealVector free, List<SweepPoint> points, FitCoordinates coordinates) {
            var diode = coordinates.diode(free);
            return new Start(
                    free,
                    points.stream()
                            .mapToDouble(point -> squaredMisfit(diode, point))
                            .sum());
        }

        private static double squaredMisfit(Diode diode, SweepPoint point) {
            var junctionV = point.voltageV() + point.currentA() * diode.seriesResistanceOhm();
            var feedback = 1 + diode.seriesResistanceOhm() * diode.conductanceS(junctionV);
            var misfit = (diode.current(junctionV) - point.currentA()) / feedback;
            return misfit * misfit;
        }
    }
}
