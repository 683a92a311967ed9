package org.berrywatt.server.light;

import java.time.Instant;
import java.util.UUID;

/**
 * A reading of the light at a station, raw.
 *
 * @param lux true: {@code valueSi} is an illuminance in lx; false: an irradiance in W/m2
 * @param valueSi what the instrument showed, in [0, infinity)
 * @param resolutionSi one step of the last digit, in the same unit
 * @param at when the instrument was read: when the server accepted the reading, or the one that this corrects
 */
public record LightReading(UUID id, boolean lux, double valueSi, double resolutionSi, Instant at) {}
