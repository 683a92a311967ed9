package org.berrywatt.server.safety;

import java.util.Map;
import java.util.UUID;
import org.berrywatt.cell.Stage;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;

/**
 * A stage that somebody says was done.
 *
 * @param recipe level keys by build parameter, as far as recorded
 * @param note what was written with it; a teacher's reason
 */
public record HazardousWork(
        UUID teamId,
        Stage stage,
        Map<String, String> recipe,
        Origin origin,
        @Nullable String note) {}
