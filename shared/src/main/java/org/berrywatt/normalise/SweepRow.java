package org.berrywatt.normalise;

import org.berrywatt.meter.Display;
import org.jspecify.annotations.Nullable;

/**
 * A row of a load sweep as it was read: at least two of the three, delivered current positive.
 *
 * @param loadOhm nominal value of the resistor, in [0, ∞]; needed where voltage or current was not read
 * @param voltage in V
 * @param current in A
 */
public record SweepRow(
        @Nullable Double loadOhm,
        @Nullable Display voltage,
        @Nullable Display current) {}
