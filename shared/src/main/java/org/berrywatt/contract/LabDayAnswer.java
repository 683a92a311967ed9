package org.berrywatt.contract;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A lab day.
 *
 * @param entryOpen whether cells and readings may be entered
 * @param resultsFinal whether nothing that results depend on may change any more
 * @param keepUntil when its teacher wants to be reminded to delete it; null while nobody has decided
 * @param code join code of the day, shown to teachers only
 * @param version grows with every edit; the {@code ETag} of this day
 */
public record LabDayAnswer(
        UUID id,
        String title,
        LocalDate date,
        double referenceIrradianceWm2,
        double referenceAreaCm2,
        String rule,
        int cellsPerTeam,
        boolean teamsCreateThemselves,
        boolean entryOpen,
        boolean resultsFinal,
        @Nullable LocalDate keepUntil,
        @Nullable String code,
        long version) {}
