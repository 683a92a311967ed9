package org.berrywatt.meter;

/**
 * A number on a meter's display, in the SI unit of its quantity.
 *
 * @param value finite
 * @param resolution one step of the last digit, in [0, ∞)
 */
public record Display(double value, double resolution) {}
