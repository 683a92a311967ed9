package org.berrywatt.server.reading;

import org.jspecify.annotations.Nullable;

/**
 * One row of a load sweep as it was read: two of the three or all, delivered current positive. What follows from them is left
 * to whoever knows the meter.
 *
 * @param loadOhm nominal value of the resistor
 * @param voltage in V
 * @param current in A
 */
public record RecordedPoint(
        @Nullable Double loadOhm,
        @Nullable Measured voltage,
        @Nullable Measured current) {}
