package org.berrywatt.reading;

/**
 * A number that decided, beside the limit it was held against.
 *
 * @param key what it is, for example {@code "darkShare"}
 * @param value the number in {@code unit}
 * @param limit the threshold in {@code unit}
 * @param unit {@code "V"}, {@code "A"} or {@code "1"} for a share or a multiple
 */
public record Decider(String key, double value, double limit, String unit) {}
