package org.berrywatt.contract;

/**
 * What a cell or a team is ranked by, in the unit of the day's metric.
 *
 * @param unit unit key of all the numbers: {@code "Wm2"}, {@code "Am2"}, {@code "V"}, {@code "part"} (a part of 1, shown in
 *     per cent) or {@code "times"}
 * @param standardUncertainty one standard uncertainty, in [0, infinity)
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 */
public record RankedFigure(double value, String unit, double standardUncertainty, double low, double high) {}
