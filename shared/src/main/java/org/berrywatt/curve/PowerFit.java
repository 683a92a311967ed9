package org.berrywatt.curve;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.uncertainty.Estimate;

/**
 * Maximum power by a parabola over ln(V/I) through the best point, its neighbours and all points above nine tenths of it;
 * never beyond the points, never outside {@link PowerBounds}.
 *
 * @param powerW with the bounds, the scatter around the parabola and the meter in its uncertainty
 * @param logLoad ln(V/I) where the power peaks; uncertain by how far the best point's neighbours are away
 * @param bracketed whether points lie on both sides of the best one
 */
record PowerFit(Estimate powerW, Estimate logLoad, boolean bracketed) {
    static PowerFit of(List<SweepPoint> along) {
        var delivering = along.stream().filter(SweepPoint::deliversPower).toList();
        var best = best(delivering);
        var bounds = PowerBounds.of(along);
        var bracketed = best > 0 && best < delivering.size() - 1;
        var parabola =
                bracketed ? Parabola.through(delivering, best) : Parabola.level(delivering.get(best), bounds.lowW());
        var peak = parabola.powerW();
        var powerW = Math.min(bounds.highW(), Math.max(bounds.lowW(), peak.value()));
        var meter = powerW * meter(delivering.get(best));
        var shape = bounds.standardUncertaintyW(powerW);
        return new PowerFit(
                new Estimate(powerW, Math.hypot(Math.hypot(peak.standardUncertainty(), shape), meter)),
                between(delivering, best, parabola.logLoad()),
                bracketed);
    }

    /** Power rises up to the best point's one neighbour and falls from the other on, so the peak lies between them. */
    private static Estimate between(List<SweepPoint> delivering, int best, double logLoad) {
        var low = delivering.get(Math.max(0, best - 1)).logLoad();
        var high = delivering.get(Math.min(delivering.size() - 1, best + 1)).logLoad();
        var peak = Math.max(low, Math.min(high, logLoad));
        return new Estimate(peak, Math.max(peak - low, high - peak) / Math.sqrt(3));
    }

    private static int best(List<SweepPoint> delivering) {
        return IntStream.range(0, delivering.size())
                .reduce((a, b) -> delivering.get(b).powerW() > delivering.get(a).powerW() ? b : a)
                .orElseThrow();
    }

    private static double meter(SweepPoint point) {
        return Math.hypot(
                point.voltageUncertaintyV() / point.voltageV(), point.currentUncertaintyA() / point.currentA());
    }
}
