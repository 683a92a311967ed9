package org.berrywatt.server.findings;

import java.util.UUID;
import org.berrywatt.contract.FindingAnswer;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What the class's cells say, for teachers and the teams of the day. */
@RestController
class FindingsController {

    private final Findings findings;

    FindingsController(Findings findings) {
        this.findings = findings;
    }

    /** @param parameter key in the build catalogue */
    @GetMapping("/api/labdays/{id}/findings")
    FindingAnswer finding(@PathVariable UUID id, @RequestParam String parameter, Caller caller) {
        caller.requireLabDay(id);
        return findings.about(parameter, id);
    }
}
