package org.berrywatt.plan;

import java.util.Map;

/**
 * A sentence of the text catalogue with its values. {@code factor}, {@code other} and {@code third} are keys of factors.
 *
 * @param key begins with {@code plan.says.}
 */
public record Statement(String key, Map<String, Object> values) {

    static Statement of(String key, Map<String, Object> values) {
        return new Statement("plan.says." + key, values);
    }
}
