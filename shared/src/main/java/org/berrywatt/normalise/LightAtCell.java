package org.berrywatt.normalise;

import org.berrywatt.light.EffectiveIrradiance;

/**
 * The light under which a cell was measured.
 *
 * @param station names the station; cells measured at one station share the error of its readings
 * @param stale whether the station's last reading was too old
 */
public record LightAtCell(EffectiveIrradiance irradiance, String station, boolean stale) {}
