package org.berrywatt.server.desk;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.DeskAnswer;
import org.berrywatt.contract.PutOffRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The attention list over HTTP. */
@RestController
@RequestMapping("/api/labdays/{id}/desk")
class DeskController {

    private final Desk desk;
    private final Clock clock;

    DeskController(Desk desk, Clock clock) {
        this.desk = desk;
        this.clock = clock;
    }

    @GetMapping
    DeskAnswer show(@PathVariable UUID id, Caller caller) {
        return desk.of(id, caller, clock.instant());
    }

    @PutMapping("/put-off")
    DeskAnswer putOff(@PathVariable UUID id, @RequestBody PutOffRequest request, Caller caller) {
        return desk.putOff(id, request, caller, clock.instant());
    }
}
