package org.berrywatt.server.paper;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.berrywatt.quantity.Field;
import org.jspecify.annotations.Nullable;

/**
 * A column of a paper table.
 *
 * @param key its name without a unit
 * @param needed whether every row has something in it
 * @param field of a number; null for words
 * @param choices keys of what may stand in it; empty for numbers and free words
 * @param words where the texts have the choices in words
 * @param meaning where the texts say what it is
 */
record PaperColumn(
        String key, boolean needed, @Nullable Field field, List<String> choices, String words, String meaning) {

    /** Units as the tidy tables end their columns' names; the others end as their key. */
    private static final Map<String, String> ENDINGS =
            Map.of("Wm2", "_w_m2", "mWcm2", "_mw_cm2", "degC", "_deg_c", "count", "");

    private static final String MEANINGS = "data.paper.";

    static PaperColumn needed(String key) {
        return new PaperColumn(key, true, null, List.of(), "", MEANINGS + key);
    }

    static PaperColumn words(String key) {
        return new PaperColumn(key, false, null, List.of(), "", MEANINGS + key);
    }

    static PaperColumn number(String key, Field field) {
        return new PaperColumn(key, false, field, List.of(), "", MEANINGS + key);
    }

    static PaperColumn choice(String key, List<String> choices, String words) {
        return new PaperColumn(key, false, null, choices, words, MEANINGS + key);
    }

    PaperColumn whereNeeded() {
        return new PaperColumn(key, true, field, choices, words, meaning);
    }

    PaperColumn meaning(String otherKey) {
        return new PaperColumn(key, needed, field, choices, words, otherKey);
    }

    /** As it stands in the first line: with the first unit that the field offers. */
    String header() {
        return field == null ? key : header(field.unitKeys().get(0));
    }

    /** The same with each unit. */
    List<String> headers() {
        return field == null
                ? List.of(key)
                : field.unitKeys().stream().map(this::header).toList();
    }

    private String header(String unitKey) {
        return key + ENDINGS.getOrDefault(unitKey, "_" + unitKey.toLowerCase(Locale.ROOT));
    }

    /** A key of the wire as the tidy tables write names: {@code bakeTime} is {@code bake_time}. */
    static String snake(String camel) {
        return camel.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }
}
