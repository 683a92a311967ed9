package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A corrected or completed build sheet (recipe and area) of a cell; the earlier sheet is kept.
 *
 * @param replaces the sheet this one takes the place of
 */
public record SheetRequest(
        UUID replaces, List<BuildValue> recipe, @Nullable Typed area, Instant noticedAt) {}
