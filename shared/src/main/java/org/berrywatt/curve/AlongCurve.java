package org.berrywatt.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Puts points in order along the curve: by the angle at which they are seen from the origin, voltages and currents taken
 * relative to their largest. Noise and hysteresis may shuffle voltages, but hardly angles.
 */
final class AlongCurve {
    /** Points nearer than this, in radians, are readings at one load: about 2 % of it. */
    static final double ONE_LOAD = 0.01;

    private AlongCurve() {}

    static List<SweepPoint> order(List<SweepPoint> points) {
        var angle = angle(points);
        var ordered = points.stream()
                .sorted(Comparator.comparingDouble(angle)
                        .thenComparingDouble(SweepPoint::voltageV)
                        .thenComparingDouble(SweepPoint::currentA))
                .toList();
        var along = new ArrayList<SweepPoint>();
        for (int start = 0, end; start < ordered.size(); start = end) {
            end = endOfLoad(ordered, start, angle);
            along.add(SweepPoint.mean(ordered.subList(start, end)));
        }
        return List.copyOf(along);
    }

    /** Angle of each point, in radians: 0 at short circuit, π/2 at open circuit. */
    static List<Double> angles(List<SweepPoint> points) {
        return points.stream().mapToDouble(angle(points)).boxed().toList();
    }

    private static int endOfLoad(List<SweepPoint> ordered, int start, ToDoubleFunction<SweepPoint> angle) {
        var limit = angle.applyAsDouble(ordered.get(start)) + ONE_LOAD;
        var end = start + 1;
        while (end < ordered.size() && angle.applyAsDouble(ordered.get(end)) <= limit) {
            end++;
        }
        return end;
    }

    private static ToDoubleFunction<SweepPoint> angle(List<SweepPoint> points) {
        var largestV = largest(points, SweepPoint::voltageV);
        var largestA = largest(points, SweepPoint::currentA);
        return point -> Math.atan2(point.voltageV() / largestV, point.currentA() / largestA);
    }

    private static double largest(List<SweepPoint> points, ToDoubleFunction<SweepPoint> size) {
        return points.stream().mapToDouble(size).max().orElse(1);
    }
}
