package org.berrywatt.server.reading;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Setting readings aside over HTTP. */
@RestController
class SetAsideController {

    private final SetAsides setAsides;
    private final Clock clock;

    SetAsideController(SetAsides setAsides, Clock clock) {
        this.setAsides = setAsides;
        this.clock = clock;
    }

    @PutMapping("/api/set-asides/{id}")
    SetAsideAnswer put(@PathVariable UUID id, @RequestBody SetAsideRequest request, Caller caller) {
        return setAsides.put(id, request, caller, clock.instant());
    }
}
