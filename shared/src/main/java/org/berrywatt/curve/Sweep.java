package org.berrywatt.curve;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A load sweep: measured points of an I-V curve and the figures they give.
 *
 * <p>Figures are had as in IEC 60904-1: short-circuit current and open-circuit voltage by a local line at the axes, maximum
 * power by a local parabola. How far they may be off follows from the shape every such curve has: it bends downwards, so it
 * lies above the chord between two points and below the lengthened chords beside them.
 *
 * @param points along the curve from short to open circuit, points of nearly the same load taken together
 */
public record Sweep(List<SweepPoint> points, SweepFigures figures) {

    /**
     * A sweep of points in any order; up and down, repeated and negative ones welcome. Only the {@link Hysteresis} asks in
     * which order they were taken.
     *
     * @throws SweepRefused when a voltage is not in [-1e6, 1e6] V or a current not in [-1e6, 1e6] A; with fewer than 3 points that deliver power; with fewer than 5 points
     *     of distinct load; when voltages or currents span less than a tenth of the largest; when the curve does not come out
     *     falling, with a fill factor in (0, 1)
     */
    public static Sweep of(List<SweepPoint> points) {
        var door = new SweepDoor(points);
        door.checkPoints();
        var along = AlongCurve.order(points);
        door.checkSpread(along);
        var figures = figures(along, door, Hysteresis.of(points).orElse(null));
        door.checkFillFactor(figures.fillFactor().value());
        return new Sweep(along, figures);
    }

    /** Voltage and current at the greatest power. */
    public PeakPoint peak() {
        return PeakPoint.of(PowerFit.of(points));
    }

    private static SweepFigures figures(List<SweepPoint> along, SweepDoor door, @Nullable Hysteresis hysteresis) {
        var currentA = AxisFit.shortCircuit(along).atAxis();
        var voltageV = AxisFit.openCircuit(along).atAxis();
        door.checkAxes(currentA.value(), voltageV.value());
        var peak = PowerFit.of(along);
        return new SweepFigures(
                currentA,
                voltageV,
                peak.powerW(),
                FillFactor.of(currentA, voltageV, peak.powerW()),
                ShuntBound.conductanceS(along, currentA.high(), voltageV.value()),
                peak.bracketed(),
                hysteresis);
    }
}
