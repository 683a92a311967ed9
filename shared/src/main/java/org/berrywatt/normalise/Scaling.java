package org.berrywatt.normalise;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a cell's figures follow the light to the reference.
 *
 * @param currentFactor short-circuit current at the reference over (current as read times the ratio of lights): 1 where current
 *     is proportional to light
 * @param voltageV open-circuit voltage at the reference light and the temperature of the reading
 * @param fillFactorAsRead under the light of the reading
 * @param fillFactor at the reference light, in [0, 1]
 * @param peakPart greatest power at the reference light over voltage times current: the fill factor again, but moving in the trials
 *     as power over voltage and current does, whose uncertainties are of one curve
 * @param between by which laws the voltage was carried where no fitted diode is trusted; null where one told all the way
 */
record Scaling(
        Term currentFactor,
        Term voltageV,
        Term fillFactorAsRead,
        Term fillFactor,
        Term peakPart,
        @Nullable VoltageBetween between) {

    static Scaling of(
            UnderLight underLight, Optional<LikelyDiodes> diodes, ClipTerms clips, Ratio ratio, Inputs inputs) {
        if (underLight instanceof SpotReading spot) {
            return BoundedScaling.of(spot, clips, ratio, inputs);
        }
        var sweep = (LoadSweep) underLight;
        var measured = SweepFillFactor.of(sweep, clips, inputs);
        return diodes.map(likely -> FittedScaling.of(sweep, likely, measured, clips, ratio, inputs))
                .orElseGet(() -> BoundedScaling.of(sweep, measured, clips, ratio, inputs));
    }
}
