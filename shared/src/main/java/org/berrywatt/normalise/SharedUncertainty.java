package org.berrywatt.normalise;

/**
 * A part of a result's uncertainty that other cells share and that therefore cancels where they are compared.
 *
 * @param source names the shared cause; equal names are one cause
 * @param powerDensityWm2 change of the power density for one standard uncertainty of the cause, with its sign
 */
public record SharedUncertainty(String source, double powerDensityWm2) {}
