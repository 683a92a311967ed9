package org.berrywatt.contract;

/**
 * One line of a worked calculation.
 *
 * @param key text key that names the step
 * @param formula in symbols, for example {@code "J = (Isc − Idark) / A"}
 * @param substituted the same with numbers and units
 * @param result value with its unit
 */
public record StepAnswer(String key, String formula, String substituted, String result) {}
