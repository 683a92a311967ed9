package org.berrywatt.server.reading;

/**
 * A number off a meter in the SI unit of its quantity.
 *
 * @param valueSi what the meter showed
 * @param resolutionSi one step of the last digit shown, in [0, infinity)
 */
public record Measured(double valueSi, double resolutionSi) {}
