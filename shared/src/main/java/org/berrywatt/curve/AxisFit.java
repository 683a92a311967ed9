package org.berrywatt.curve;

import java.util.Comparator;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * Where a curve meets an axis: a line through the points near it, those within a tenth of the largest, at least two.
 *
 * <p>Where no point lies at or beyond the axis, the curve meets it somewhere between the nearest point and the lengthened line,
 * because it bends downwards: near the line when the point is near the axis, anywhere when it is a quarter of the way out.
 * The middle of what is left is taken and its half-width carried as rectangular.
 *
 * @param nearestFirst points by distance from the axis
 * @param farthest distance of the last point of the curve from the axis
 * @param bracketed whether a point lies at or beyond the axis
 */
record AxisFit(List<AxisPoint> nearestFirst, double farthest, boolean bracketed) {
    private static final double NEAR = 0.1;
    private static final int FEWEST = 2;

    static AxisFit shortCircuit(List<SweepPoint> along) {
        return of(along.stream().map(AxisPoint::ofVoltage).toList());
    }

    static AxisFit openCircuit(List<SweepPoint> along) {
        return of(along.stream().map(AxisPoint::ofCurrent).toList());
    }

    private static AxisFit of(List<AxisPoint> points) {
        var nearestFirst = points.stream()
                .sorted(Comparator.comparingDouble(AxisPoint::distance))
                .toList();
        var farthest = nearestFirst.get(points.size() - 1).distance();
        var near = (int) nearestFirst.stream()
                .filter(point -> point.distance() <= NEAR * farthest)
                .count();
        var bracketed = points.stream().anyMatch(point -> point.x() <= 0);
        return new AxisFit(nearestFirst.subList(0, Math.max(untilApart(nearestFirst), near)), farthest, bracketed);
    }

    /** A coarse display shows neighbours alike; a line needs two points that differ. */
    private static int untilApart(List<AxisPoint> nearestFirst) {
        var count = FEWEST;
        while (count < nearestFirst.size()
                && nearestFirst.get(count - 1).x() == nearestFirst.get(0).x()) {
            count++;
        }
        return count;
    }

    Estimate atAxis() {
        var line = line();
        var nearest = nearestFirst.get(0);
        var reach = bracketed ? 0 : bend(nearest) * (line.getIntercept() - nearest.y());
        var meter = Math.hypot(nearest.yUncertainty(), line.getSlope() * nearest.xUncertainty());
        var scatter = nearestFirst.size() > FEWEST ? line.getInterceptStdErr() : 0;
        return new Estimate(line.getIntercept() - reach, Math.hypot(Math.hypot(meter, scatter), reach / Math.sqrt(3)));
    }

    /** How much of the way from the line to the nearest point the middle lies, in [0, 1/2]. */
    private double bend(AxisPoint nearest) {
        return Math.min(0.5, 2 * nearest.distance() / farthest);
    }

    private SimpleRegression line() {
        var line = new SimpleRegression();
        nearestFirst.forEach(point -> line.addData(point.x(), point.y()));
        return line;
    }
}
