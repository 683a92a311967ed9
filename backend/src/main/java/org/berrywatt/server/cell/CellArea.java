package org.berrywatt.server.cell;

/**
 * Active area of a cell.
 *
 * @param areaM2 in (0, infinity)
 * @param standardUncertaintyM2 one standard uncertainty, in [0, infinity)
 */
public record CellArea(double areaM2, double standardUncertaintyM2) {}
