package org.berrywatt.server.cell;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.CellEventAnswer;
import org.berrywatt.contract.CellEventRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Refills and repairs over HTTP. */
@RestController
class CellWorkController {

    private final CellWork work;
    private final Clock clock;

    CellWorkController(CellWork work, Clock clock) {
        this.work = work;
        this.clock = clock;
    }

    @PutMapping("/api/cell-events/{id}")
    CellEventAnswer put(@PathVariable UUID id, @RequestBody CellEventRequest request, Caller caller) {
        return work.put(id, request, caller, clock.instant());
    }
}
