package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Input;

/** The fill factor as it was measured by a sweep: Pmax / (Voc Isc). */
final class SweepFillFactor {
    private SweepFillFactor() {}

    static Term of(LoadSweep sweep, ClipTerms clips, Inputs inputs) {
        return inputs.add(Input.normal("input.sweepPower", sweep.figures().maximumPowerW(), "W"))
                .atLeastZero()
                .over(clips.currentA().times(clips.voltageV()));
    }
}
