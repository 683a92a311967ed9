package org.berrywatt.reading;

import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * What the meter showed between the two glasses; both positive when the dyed oxide is the negative terminal.
 *
 * @param voltageV open-circuit voltage in volts; null when not read
 * @param currentA short-circuit current in amperes; null when not read
 */
public record Terminals(
        @Nullable Estimate voltageV, @Nullable Estimate currentA) {}
