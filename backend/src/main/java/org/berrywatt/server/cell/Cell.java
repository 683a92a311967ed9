package org.berrywatt.server.cell;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A cell as later features see it: its present build sheet and how each stage stands.
 *
 * @param recipe build parameters of the present sheet, in the catalogue's order
 * @param area active area, null until it is entered
 * @param outcomes the valid outcome of each stage that has one (latest, corrections applied), in the order accepted
 * @param refills when it was filled anew, oldest first
 */
public record Cell(
        UUID id,
        UUID teamId,
        UUID labDayId,
        String label,
        List<RecipeEntry> recipe,
        @Nullable CellArea area,
        List<StageOutcome> outcomes,
        List<Instant> refills,
        Instant registeredAt) {

    /** The entry of one build parameter. */
    public Optional<RecipeEntry> entry(String parameter) {
        return recipe.stream()
                .filter(entry -> entry.parameter().equals(parameter))
                .findFirst();
    }

    /** What was chosen, by build parameter, as far as recorded. */
    public Map<String, String> levels() {
        return recipe.stream().collect(Collectors.toMap(RecipeEntry::parameter, RecipeEntry::text));
    }

    /** The stage that ended this cell, when one did. */
    public Optional<StageOutcome> failure() {
        return outcomes.stream().filter(outcome -> !outcome.passed()).findFirst();
    }
}
