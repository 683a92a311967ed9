package org.berrywatt.server.findings;

import java.util.UUID;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** What the class's cells say, for teachers and the teams of the day. */
@RestController
class FindingsController {

    private final Findings findings;

    FindingsController(Findings findings) {
        this.findings = findings;
    }

    @GetMapping("/api/labdays/{id}/findings")
    FindingsAnswer findings(@PathVariable UUID id, Caller caller) {
        caller.requireLabDay(id);
        return findings.of(id);
    }
}
