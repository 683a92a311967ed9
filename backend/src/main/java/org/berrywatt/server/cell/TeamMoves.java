package org.berrywatt.server.cell;

import org.berrywatt.server.team.TeamMerged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Cells follow their team when it is joined to another, in the same transaction. */
@Component
class TeamMoves {

    private final CellRepository cells;

    TeamMoves(CellRepository cells) {
        this.cells = cells;
    }

    @EventListener
    void on(TeamMerged merger) {
        cells.moveTeam(merger.teamId(), merger.into());
    }
}
