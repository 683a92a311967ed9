package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A cell with its present build sheet, all its stage outcomes, and its refills and repairs, oldest first. */
public record CellAnswer(
        UUID id,
        UUID teamId,
        UUID labDayId,
        String label,
        UUID sheetId,
        List<RecipeValue> recipe,
        @Nullable Typed area,
        @Nullable Double areaCm2,
        @Nullable Double areaUncertaintyCm2,
        List<OutcomeAnswer> outcomes,
        List<CellEventAnswer> events,
        Instant registeredAt) {}
