package org.berrywatt.server.reading;

/**
 * One row of a load sweep, delivered current positive.
 *
 * @param voltage in V
 * @param current in A
 */
public record RecordedPoint(Measured voltage, Measured current) {}
