package org.berrywatt.server.safety;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.berrywatt.cell.Stage;
import org.berrywatt.safety.Hazards;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;

/**
 * Something dangerous that somebody says was done.
 *
 * @param zones those that the team must be signed off for
 * @param field what a team's request calls the work
 * @param note what was written with it; a teacher's reason
 */
public record HazardousWork(
        UUID teamId,
        Set<Zone> zones,
        String field,
        Origin origin,
        @Nullable String note) {

    /**
     * A stage of a cell.
     *
     * @param recipe level keys by build parameter, as far as recorded
     */
    public static HazardousWork stage(
            UUID teamId, Stage stage, Map<String, String> recipe, Origin origin, @Nullable String note) {
        return new HazardousWork(teamId, Hazards.gatesOf(stage, recipe), "stage", origin, note);
    }

    /** A cell put on a heater: hot whatever its recipe says, and with a flame where the recipe names a burner. */
    public static HazardousWork heater(UUID teamId, Map<String, String> recipe, Origin origin, @Nullable String note) {
        var zones = EnumSet.of(Zone.HEAT);
        zones.addAll(Hazards.gatesOf(Stage.BAKE, recipe));
        return new HazardousWork(teamId, zones, "cellId", origin, note);
    }
}
