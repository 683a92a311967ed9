package org.berrywatt.contract;

import java.util.Map;

/**
 * A sentence for a person, named by its key in the text catalogue, with the values to put in.
 *
 * @param key key in the text catalogue
 * @param values placeholder name to value; numbers are formatted by the reader's language, and a text that is itself a
 *     key of the catalogue ({@code "catalogue.stage.bake"}) stands for its sentence
 */
public record Remark(String key, Map<String, Object> values) {

    public static Remark of(String key) {
        return new Remark(key, Map.of());
    }
}
