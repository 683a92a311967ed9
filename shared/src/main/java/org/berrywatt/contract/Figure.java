package org.berrywatt.contract;

/**
 * A computed figure with its uncertainty, in the SI unit that the field's name carries.
 *
 * @param value the estimate
 * @param standardUncertainty one standard uncertainty, in [0, infinity)
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 */
public record Figure(double value, double standardUncertainty, double low, double high) {}
