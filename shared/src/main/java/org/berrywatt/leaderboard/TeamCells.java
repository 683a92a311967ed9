package org.berrywatt.leaderboard;

import java.util.List;
import java.util.UUID;

/** A team with the cells it has registered, in any order. */
public record TeamCells(UUID teamId, List<CellEntry> cells) {

    <T extends CellEntry> List<T> only(Class<T> kind) {
        return cells.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
