package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * One state of the shutter in a series of light toggles.
 *
 * @param lit whether the cell was open to the light
 * @param voltageV what the meter showed, when voltages were read
 * @param currentA what the meter showed, when currents were read
 */
public record ToggleAnswer(
        boolean lit,
        Typed typed,
        @Nullable Double voltageV,
        @Nullable Double currentA) {}
