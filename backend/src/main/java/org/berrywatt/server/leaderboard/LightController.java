package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LightPreviewAnswer;
import org.berrywatt.contract.LightPreviewRequest;
import org.berrywatt.contract.LightUseAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
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
    private final Leaderboards leaderboards;

    LightController(Stations stations, Leaderboards leaderboards) {
        this.stations = stations;
        this.leaderboards = leaderboards;
    }

    @GetMapping("/api/stations/{id}/cells")
    List<LightUseAnswer> cells(@PathVariable UUID id, Caller caller) {
        caller.requireTeacher();
        return leaderboards.leaningOn(stations.find(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND)));
    }

    @PostMapping("/api/irradiances/{id}/preview")
    LightPreviewAnswer preview(@PathVariable UUID id, @RequestBody LightPreviewRequest request, Caller caller) {
        return leaderboards.ifLightWere(stations.ifCorrected(id, request.reading(), caller));
    }
}
