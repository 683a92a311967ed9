package org.berrywatt.server.cell;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeAnswer;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.SheetRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Cells, build sheets and stage outcomes over HTTP. */
@RestController
@RequestMapping("/api")
class CellController {

    private final Cells cells;
    private final Clock clock;

    CellController(Cells cells, Clock clock) {
        this.cells = cells;
        this.clock = clock;
    }

    @PutMapping("/cells/{id}")
    CellAnswer put(@PathVariable UUID id, @RequestBody CellRequest request, Caller caller) {
        return cells.put(id, request, caller, clock.instant());
    }

    @PutMapping("/cells/{cellId}/sheets/{sheetId}")
    CellAnswer putSheet(
            @PathVariable UUID cellId, @PathVariable UUID sheetId, @RequestBody SheetRequest request, Caller caller) {
        return cells.putSheet(cellId, sheetId, request, caller, clock.instant());
    }

    @PutMapping("/outcomes/{id}")
    OutcomeAnswer putOutcome(@PathVariable UUID id, @RequestBody OutcomeRequest request, Caller caller) {
        return cells.putOutcome(id, request, caller, clock.instant());
    }

    @GetMapping("/cells/{id}")
    CellAnswer show(@PathVariable UUID id, Caller caller) {
        return cells.show(id, caller);
    }

    @GetMapping("/labdays/{labDayId}/cells")
    List<CellAnswer> list(@PathVariable UUID labDayId, Caller caller) {
        return cells.list(labDayId, caller);
    }
}
