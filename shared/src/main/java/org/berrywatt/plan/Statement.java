package org.berrywatt.plan;

import java.util.Map;

/**
 * A sentence of the text catalogue with its values. {@code factor}, {@code other} and {@code third} are keys of factors.
 *
 * @param key begins with {@code plan.says.}
 */
public record Statement(String key, Weight weight, Map<String, Object> values) {

    /** What a sentence means for whoever plans. */
    public enum Weight {
        /** The plan does what is wanted. */
        GOOD,
        /** It does less. */
        WEAK,
        /** It does not. */
        CANNOT,
        /** Something to know. */
        NOTE
    }

    static Statement of(String key, Weight weight, Map<String, Object> values) {
        return new Statement("plan.says." + key, weight, values);
    }
}
