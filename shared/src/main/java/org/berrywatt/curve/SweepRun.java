package org.berrywatt.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * A stretch of a sweep over which the load only rises or only falls.
 *
 * @param points in the order in which they were taken
 * @param angles of the points, see {@link AlongCurve#angles}
 * @param towardsOpen whether the load rose
 */
record SweepRun(List<SweepPoint> points, List<Double> angles, boolean towardsOpen) {

    /** Points nearer than this, as a part of the highest voltage, are readings at one voltage. */
    private static final double ONE_VOLTAGE = 0.01;

    /** The stretches of a sweep in the order in which they were measured; where one ends the next begins. */
    static List<SweepRun> among(List<SweepPoint> taken) {
        var angles = AlongCurve.angles(taken);
        var runs = new ArrayList<SweepRun>();
        for (int start = 0; start < taken.size() - 1; ) {
            var up = turn(angles, start, 1);
            var end = Math.max(up, turn(angles, start, -1));
            runs.add(new SweepRun(taken.subList(start, end + 1), angles.subList(start, end + 1), up == end));
            start = Math.max(end, start + 1);
        }
        return List.copyOf(runs);
    }

    /** Only the points whose load the other run has, too. */
    SweepRun atLoadsOf(SweepRun other) {
        return only(i ->
                other.angles.stream().anyMatch(angle -> Math.abs(angle - angles.get(i)) <= AlongCurve.ONE_LOAD));
    }

    /** Only the points whose voltage the other run has, too. */
    SweepRun atVoltagesOf(SweepRun other) {
        var near = ONE_VOLTAGE * Math.max(highestV(), other.highestV());
        return only(i -> other.points.stream()
                .anyMatch(point -> Math.abs(point.voltageV() - points.get(i).voltageV()) <= near));
    }

    private SweepRun only(IntPredicate shared) {
        var kept = IntStream.range(0, points.size()).filter(shared).boxed().toList();
        return new SweepRun(
                kept.stream().map(points::get).toList(),
                kept.stream().map(angles::get).toList(),
                towardsOpen);
    }

    private double highestV() {
        return points.stream().mapToDouble(SweepPoint::voltageV).max().orElse(0);
    }

    /** Greatest power, when there are loads enough and the peak lies between them. */
    Optional<Double> powerW() {
        return Optional.of(AlongCurve.order(points))
                .filter(SweepDoor::hasEnough)
                .map(PowerFit::of)
                .filter(PowerFit::bracketed)
                .map(fit -> fit.powerW().value());
    }

    /** The farthest point in one direction before the load turns by more than one load. */
    private static int turn(List<Double> angles, int start, int sign) {
        var farthest = start;
        for (int i = start; i < angles.size(); i++) {
            var ahead = sign * (angles.get(i) - angles.get(farthest));
            if (ahead < -AlongCurve.ONE_LOAD) {
                break;
            }
            farthest = ahead >= 0 ? i : farthest;
        }
        return farthest;
    }
}
