package org.berrywatt.contract;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a change to a station, its light or its lamp would move; nothing has been written.
 *
 * @param cells that would have another result, or start or stop to count
 * @param teams that would have another figure or place, in order of place after the correction
 */
public record LightPreviewAnswer(List<CellMove> cells, List<TeamMove> teams) {

    /** A cell before and after. */
    public record CellMove(UUID cellId, String label, String team, CellStanding before, CellStanding after) {}

    /**
     * A team before and after.
     *
     * @param placeBefore null while not ranked
     * @param placeAfter null while not ranked
     */
    public record TeamMove(
            UUID teamId,
            String name,
            int mark,
            @Nullable Integer placeBefore,
            @Nullable Integer placeAfter,
            @Nullable RankedFigure before,
            @Nullable RankedFigure after) {}
}
