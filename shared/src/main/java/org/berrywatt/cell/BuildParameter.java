package org.berrywatt.cell;

import java.util.List;
import java.util.Set;
import org.berrywatt.quantity.Field;
import org.jspecify.annotations.Nullable;

/**
 * One thing that can differ from cell to cell in how it is built.
 *
 * @param key name on the wire and in the texts
 * @param stage the stage at which it is decided
 * @param field ranges and units of a number; null for a sort
 * @param levelKeys what there is to choose from for a sort; empty for a number
 */
public record BuildParameter(
        String key, Stage stage, @Nullable Field field, List<String> levelKeys) {

    private static final Set<String> OPEN = Set.of("other", "otherPlant");

    /** The levels that name nothing, so that a team says in its own words what it took. */
    public List<String> openLevelKeys() {
        return levelKeys.stream().filter(OPEN::contains).toList();
    }

    static BuildParameter number(Stage stage, Field field) {
        return new BuildParameter(field.key(), stage, field, List.of());
    }

    static BuildParameter sort(String key, Stage stage, String... levelKeys) {
        return new BuildParameter(key, stage, null, List.of(levelKeys));
    }

    public Kind kind() {
        return field == null ? Kind.SORT : Kind.NUMBER;
    }

    /** Whether a parameter is ordered along a scale or a choice among names. */
    public enum Kind {
        NUMBER("number"),
        SORT("sort");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }
}
