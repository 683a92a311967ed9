package org.berrywatt.findings;

import java.util.Map;

/**
 * A sentence of the text catalogue with its values. Values whose name ends in {@code Parameter} are keys of parameters; values
 * whose name ends in {@code Level} are keys of levels: of the parameter whose name begins alike ({@code firstLevel} and {@code
 * firstOtherLevel} belong to {@code firstParameter}), otherwise of the parameter that the finding is about.
 *
 * @param key begins with {@code finding.}
 */
public record Sentence(String key, Map<String, Object> values) {

    static Sentence of(String key, Map<String, Object> values) {
        return new Sentence("finding." + key, values);
    }
}
