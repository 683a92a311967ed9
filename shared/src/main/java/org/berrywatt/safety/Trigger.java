package org.berrywatt.safety;

import java.util.List;
import java.util.Map;
import org.berrywatt.cell.Stage;
import org.jspecify.annotations.Nullable;

/**
 * What brings a hazard to a stage.
 *
 * @param parameter key of the build parameter that decides, null when the stage brings the hazard whatever the recipe
 * @param levels level keys that bring it; empty when {@code parameter} is null
 * @param unrecorded whether it is there as long as the parameter is not recorded, that being the usual way
 */
public record Trigger(Hazard hazard, Stage stage, @Nullable String parameter, List<String> levels, boolean unrecorded) {

    static Trigger always(Hazard hazard, Stage stage) {
        return new Trigger(hazard, stage, null, List.of(), true);
    }

    static Trigger with(Hazard hazard, Stage stage, String parameter, String... levels) {
        return new Trigger(hazard, stage, parameter, List.of(levels), false);
    }

    Trigger orUnrecorded() {
        return new Trigger(hazard, stage, parameter, levels, true);
    }

    boolean isThere(Map<String, String> recipe) {
        if (parameter == null) {
            return true;
        }
        var level = recipe.get(parameter);
        return level == null ? unrecorded : levels.contains(level);
    }
}
