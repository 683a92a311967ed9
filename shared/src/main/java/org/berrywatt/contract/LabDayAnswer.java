package org.berrywatt.contract;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A lab day.
 *
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
        @Nullable String code,
        long version) {}
