package org.berrywatt.server.findings;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CellCurveAnswer;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;
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

    /** @param only facet and value with a tab between them, as often as needed; neither a key nor a number holds a comma */
    @GetMapping("/api/labdays/{id}/findings")
    FindingsAnswer findings(
            @PathVariable UUID id, @RequestParam(required = false) @Nullable List<String> only, Caller caller) {
        caller.requireLabDay(id);
        return findings.of(id, Filter.of(only));
    }

    @GetMapping("/api/labdays/{id}/curves")
    List<CellCurveAnswer> curves(@PathVariable UUID id, Caller caller) {
        caller.requireLabDay(id);
        return findings.curves(id);
    }
}
