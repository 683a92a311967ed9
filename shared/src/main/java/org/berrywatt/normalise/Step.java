package org.berrywatt.normalise;

/**
 * One line of the worked calculation.
 *
 * @param key text key, {@code step.…}
 * @param formula in symbols
 * @param substituted the same with numbers and units
 * @param result value with its unit
 */
public record Step(String key, String formula, String substituted, String result) {}
