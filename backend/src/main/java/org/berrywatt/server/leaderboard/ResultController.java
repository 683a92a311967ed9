package org.berrywatt.server.leaderboard;

import java.util.UUID;
import org.berrywatt.contract.CellResultAnswer;
import org.berrywatt.contract.SettlingAnswer;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The worked calculation of a cell, and how it settles, for its team and for teachers. */
@RestController
class ResultController {

    private final Cells cells;
    private final Leaderboards leaderboards;

    ResultController(Cells cells, Leaderboards leaderboards) {
        this.cells = cells;
        this.leaderboards = leaderboards;
    }

    @GetMapping("/api/cells/{id}/result")
    CellResultAnswer result(@PathVariable UUID id, Caller caller) {
        return leaderboards.result(cells.requireOwn(id, caller));
    }

    @GetMapping("/api/cells/{id}/settling")
    SettlingAnswer settling(@PathVariable UUID id, Caller caller) {
        return leaderboards.settling(cells.requireOwn(id, caller));
    }
}
