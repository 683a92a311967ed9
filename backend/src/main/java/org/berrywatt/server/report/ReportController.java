package org.berrywatt.server.report;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.ReportAnswer;
import org.berrywatt.contract.TeamCommentAnswer;
import org.berrywatt.contract.TeamCommentRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Reports over HTTP, for teachers. */
@RestController
@RequestMapping("/api")
class ReportController {

    private final Reports reports;
    private final Comments comments;
    private final Clock clock;

    ReportController(Reports reports, Comments comments, Clock clock) {
        this.reports = reports;
        this.comments = comments;
        this.clock = clock;
    }

    @GetMapping("/labdays/{id}/report")
    ReportAnswer report(@PathVariable UUID id, Caller caller) {
        return reports.of(id, caller);
    }

    @PutMapping("/team-comments/{id}")
    TeamCommentAnswer comment(@PathVariable UUID id, @RequestBody TeamCommentRequest request, Caller caller) {
        return comments.put(id, request, caller, clock.instant());
    }
}
