package org.berrywatt.normalise;

import java.util.Map;

/**
 * What a reader of the result should know.
 *
 * @param key text key, {@code note.…}
 * @param values placeholder name to number
 */
public record Note(String key, Map<String, Double> values) {}
