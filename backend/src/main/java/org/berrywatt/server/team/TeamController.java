package org.berrywatt.server.team;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.JoinAnswer;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Passes;
import org.berrywatt.server.access.Throttle;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Teams over HTTP, and the pass that makes a phone one of the team's. */
@RestController
class TeamController {

    private final Teams teams;
    private final Joining joining;
    private final Passes passes;
    private final Throttle throttle;
    private final Clock clock;

    TeamController(Teams teams, Joining joining, Passes passes, Throttle throttle, Clock clock) {
        this.teams = teams;
        this.joining = joining;
        this.passes = passes;
        this.throttle = throttle;
        this.clock = clock;
    }

    @GetMapping("/api/labdays/{labDayId}/teams")
    List<TeamAnswer> list(@PathVariable UUID labDayId, Caller caller) {
        return teams.list(labDayId, caller);
    }

    @PutMapping("/api/teams/{id}")
    ResponseEntity<TeamAnswer> put(
            @PathVariable UUID id, @RequestBody TeamRequest body, Caller caller, HttpServletRequest request) {
        var code = body.code();
        if (code != null) {
            throttle.guardCode(request, () -> joining.requireDay(code));
        }
        var team = teams.put(id, body, caller, clock.instant());
        return caller instanceof Caller.Teacher || team.code() == null
                ? ResponseEntity.ok(team)
                : joined(new Caller.TeamMember(id, team.labDayId()), team, request);
    }

    @PostMapping("/api/access/join")
    ResponseEntity<JoinAnswer> join(@RequestBody JoinRequest body, HttpServletRequest request) {
        var opened = throttle.guardCode(request, () -> joining.open(body));
        var teamId = opened.teamId();
        return teamId == null
                ? ResponseEntity.ok(opened)
                : joined(new Caller.TeamMember(teamId, opened.labDayId()), opened, request);
    }

    private <A> ResponseEntity<A> joined(Caller.TeamMember member, A answer, HttpServletRequest request) {
        return ResponseEntity.ok()
                .header(HttpHeaders.SET_COOKIE, passes.issue(member, request).toString())
                .body(answer);
    }
}
