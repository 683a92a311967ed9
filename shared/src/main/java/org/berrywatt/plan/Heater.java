package org.berrywatt.plan;

/**
 * Something to bake on; it holds one temperature at a time.
 *
 * @param positions cells that lie on it at once, 1 or more
 */
public record Heater(String name, int positions) {}
