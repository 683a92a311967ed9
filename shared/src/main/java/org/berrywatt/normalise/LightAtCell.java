package org.berrywatt.normalise;

import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Uniformity;

/**
 * The light under which a cell was measured.
 *
 * @param station names the station; cells measured at one station share the error of its readings
 * @param stale whether the station's last reading was too old
 * @param placeUncertainty relative standard uncertainty from where the cell lay in the spot, in [0, ∞)
 */
public record LightAtCell(EffectiveIrradiance irradiance, String station, boolean stale, double placeUncertainty) {

    /** The light of a spot of which nobody has read how even it is. */
    public LightAtCell(EffectiveIrradiance irradiance, String station, boolean stale) {
        this(irradiance, station, stale, Uniformity.UNREAD_PLACE);
    }
}
