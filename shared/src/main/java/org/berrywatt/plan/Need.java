package org.berrywatt.plan;

/**
 * Something to have ready.
 *
 * @param key name of it
 * @param parameter build parameter whose level it is of, empty for what every cell takes
 * @param level which one, empty likewise
 * @param cells number of cells that take it
 * @param amount how much with waste, rounded up
 * @param unit {@code count}, {@code g} or {@code mL}
 */
public record Need(String key, String parameter, String level, int cells, double amount, String unit) {}
