package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cell as the leaderboard sees it.
 *
 * @param standing {@code "counts"}, {@code "waiting"} (something is missing or it is not a solar cell yet) or
 *     {@code "failed"}
 * @param ranked whether the day's rule takes it; a cell that counts and is not ranked has the reason in its remark
 * @param figure what the day ranks by, when it counts
 * @param powerDensityWm2 maximum power per area at reference conditions, when it counts
 * @param remark why it waits or failed and what to do, or what to know about a cell that counts
 */
public record CellStanding(
        UUID cellId,
        String label,
        String standing,
        boolean ranked,
        @Nullable RankedFigure figure,
        @Nullable Figure powerDensityWm2,
        @Nullable Remark remark) {}
