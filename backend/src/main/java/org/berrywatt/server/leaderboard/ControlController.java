package org.berrywatt.server.leaderboard;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.ControlCellAnswer;
import org.berrywatt.contract.ControlCellRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.light.ControlCells;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The control cell of a day and what it tells of the stations. */
@RestController
@RequestMapping("/api/labdays/{labDayId}/control-cell")
class ControlController {

    private final ControlCells controls;
    private final Leaderboards leaderboards;
    private final Clock clock;

    ControlController(ControlCells controls, Leaderboards leaderboards, Clock clock) {
        this.controls = controls;
        this.leaderboards = leaderboards;
        this.clock = clock;
    }

    @PutMapping
    ControlCellAnswer choose(@PathVariable UUID labDayId, @RequestBody ControlCellRequest request, Caller caller) {
        controls.choose(labDayId, request, caller, clock.instant());
        return answer(labDayId);
    }

    @GetMapping
    ControlCellAnswer show(@PathVariable UUID labDayId, Caller caller) {
        caller.requireLabDay(labDayId);
        return answer(labDayId);
    }

    private ControlCellAnswer answer(UUID labDayId) {
        return controls.ofLabDay(labDayId).map(leaderboards::asControl).orElse(ControlCourse.NONE);
    }
}
