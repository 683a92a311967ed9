package org.berrywatt.server.leaderboard;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LightPreviewAnswer;
import org.berrywatt.contract.LightPreviewRequest;
import org.berrywatt.contract.LightUseAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetAsideRequest;
import org.berrywatt.contract.SpectrumRequest;
import org.berrywatt.contract.StationCorrectionRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.light.LightSetAsides;
import org.berrywatt.server.light.StationChanges;
import org.berrywatt.server.light.Stations;
import org.berrywatt.server.platform.Refusal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** What results owe to a station's light, for teachers. */
@RestController
class LightController {

    private final Stations stations;
    private final StationChanges changes;
    private final LightSetAsides setAsides;
    private final Leaderboards leaderboards;
    private final Clock clock;

    LightController(
            Stations stations,
            StationChanges changes,
            LightSetAsides setAsides,
            Leaderboards leaderboards,
            Clock clock) {
        this.stations = stations;
        this.changes = changes;
        this.setAsides = setAsides;
        this.clock = clock;
        this.leaderboards = leaderboards;
    }

    @GetMapping("/api/stations/{id}/cells")
    List<LightUseAnswer> cells(@PathVariable UUID id, Caller caller) {
        caller.requireTeacher();
        return leaderboards.leaningOn(stations.find(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND)));
    }

    @PostMapping("/api/irradiances/{id}/preview")
    LightPreviewAnswer preview(@PathVariable UUID id, @RequestBody LightPreviewRequest request, Caller caller) {
        return leaderboards.ifStationWere(stations.ifCorrected(id, request.reading(), caller));
    }

    @PostMapping("/api/light-set-asides/preview")
    LightPreviewAnswer preview(@RequestBody SetAsideRequest request, Caller caller) {
        return leaderboards.ifStationWere(setAsides.ifPut(request, caller, clock.instant()));
    }

    @PostMapping("/api/stations/{id}/corrections/preview")
    LightPreviewAnswer preview(@PathVariable UUID id, @RequestBody StationCorrectionRequest request, Caller caller) {
        return leaderboards.ifStationWere(changes.ifCorrected(id, request, caller));
    }

    @PostMapping("/api/stations/{id}/spectra/preview")
    LightPreviewAnswer preview(@PathVariable UUID id, @RequestBody SpectrumRequest request, Caller caller) {
        return leaderboards.ifStationWere(changes.ifLitBy(id, request, caller));
    }
}
