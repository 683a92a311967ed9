package org.berrywatt.findings;

import java.util.Map;

/**
 * A sentence of the text catalogue with its values. Values whose name ends in {@code Level} are keys of levels.
 *
 * @param key begins with {@code finding.}
 */
public record Sentence(String key, Map<String, Object> values) {

    static Sentence of(String key, Map<String, Object> values) {
        return new Sentence("finding." + key, values);
    }
}
