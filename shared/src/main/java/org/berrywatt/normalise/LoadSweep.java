package org.berrywatt.normalise;

import java.util.List;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.curve.SweepPoint;

/**
 * A load sweep. The current and voltage of each point belong together, so that no burden is left in it.
 *
 * @param figures what the points say at the axes and at the peak
 * @param points to fit a diode to, that tells how the figures follow the light; empty where only the figures are known
 */
public record LoadSweep(SweepFigures figures, List<SweepPoint> points) implements UnderLight {
    public static LoadSweep of(Sweep sweep) {
        return new LoadSweep(sweep.figures(), sweep.points());
    }

    /** Copies the points. */
    public LoadSweep {
        points = List.copyOf(points);
    }
}
