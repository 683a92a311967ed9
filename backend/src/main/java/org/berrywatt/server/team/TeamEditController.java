package org.berrywatt.server.team;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamCodeRequest;
import org.berrywatt.contract.TeamMergerRequest;
import org.berrywatt.contract.TeamNameRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Changes to teams over HTTP. */
@RestController
@RequestMapping("/api")
class TeamEditController {

    private final TeamEdits edits;
    private final TeamMergers mergers;
    private final Clock clock;

    TeamEditController(TeamEdits edits, TeamMergers mergers, Clock clock) {
        this.edits = edits;
        this.mergers = mergers;
        this.clock = clock;
    }

    @PutMapping("/teams/{id}/name")
    TeamAnswer rename(@PathVariable UUID id, @RequestBody TeamNameRequest request, Caller caller) {
        return edits.rename(id, request, caller, clock.instant());
    }

    @PutMapping("/teams/{id}/merger")
    TeamAnswer merge(@PathVariable UUID id, @RequestBody TeamMergerRequest request, Caller caller) {
        return mergers.merge(id, request, caller, clock.instant());
    }

    @PutMapping("/team-codes/{id}")
    TeamAnswer renew(@PathVariable UUID id, @RequestBody TeamCodeRequest request, Caller caller) {
        return edits.renew(id, request, caller, clock.instant());
    }
}
