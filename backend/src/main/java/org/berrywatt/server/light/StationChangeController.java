package org.berrywatt.server.light;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.SetAsideAnswer;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationAnswer;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Changes to stations after the fact over HTTP. */
@RestController
@RequestMapping("/api")
class StationChangeController {

    private final StationChanges changes;
    private final LightSetAsides setAsides;
    private final Clock clock;

    StationChangeController(StationChanges changes, LightSetAsides setAsides, Clock clock) {
        this.changes = changes;
        this.setAsides = setAsides;
        this.clock = clock;
    }

    @PutMapping("/stations/{stationId}/corrections/{id}")
    StationAnswer correct(
            @PathVariable UUID stationId,
            @PathVariable UUID id,
            @RequestBody StationCorrectionRequest request,
            Caller caller) {
        return changes.correct(stationId, id, request, caller, clock.instant());
    }

    @PutMapping("/stations/{stationId}/spectra/{id}")
    StationAnswer give(
            @PathVariable UUID stationId, @PathVariable UUID id, @RequestBody SpectrumRequest request, Caller caller) {
        return changes.give(stationId, id, request, caller, clock.instant());
    }

    @PutMapping("/light-set-asides/{id}")
    SetAsideAnswer setAside(@PathVariable UUID id, @RequestBody SetAsideRequest request, Caller caller) {
        return setAsides.put(id, request, caller, clock.instant());
    }
}
