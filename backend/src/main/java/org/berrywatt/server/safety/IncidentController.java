package org.berrywatt.server.safety;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.IncidentAnswer;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The log of incidents over HTTP. */
@RestController
@RequestMapping("/api")
class IncidentController {

    private final Incidents incidents;
    private final Clock clock;

    IncidentController(Incidents incidents, Clock clock) {
        this.incidents = incidents;
        this.clock = clock;
    }

    @PutMapping("/incidents/{id}")
    IncidentAnswer put(@PathVariable UUID id, @RequestBody IncidentRequest request, Caller caller) {
        return incidents.put(id, request, caller, clock.instant());
    }

    @PutMapping("/incidents/{id}/look")
    IncidentAnswer look(@PathVariable UUID id, Caller caller) {
        return incidents.look(id, caller, clock.instant());
    }

    @GetMapping("/labdays/{labDayId}/incidents")
    List<IncidentAnswer> list(@PathVariable UUID labDayId, Caller caller) {
        return incidents.list(labDayId, caller);
    }
}
