package org.berrywatt.contract.calculation;

/**
 * How sure a figure is, in the figure's unit.
 *
 * @param standardUncertainty one standard uncertainty, in [0, infinity)
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 */
public record Spread(double standardUncertainty, double low, double high) {}
