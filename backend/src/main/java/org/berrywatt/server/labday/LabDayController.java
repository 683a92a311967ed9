package org.berrywatt.server.labday;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.RetentionRequest;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Lab days over HTTP; the {@code ETag} of a day is its version. */
@RestController
@RequestMapping("/api/labdays")
class LabDayController {

    private final LabDays days;
    private final LabDayChanges changes;
    private final Clock clock;

    LabDayController(LabDays days, LabDayChanges changes, Clock clock) {
        this.days = days;
        this.changes = changes;
        this.clock = clock;
    }

    @GetMapping
    List<LabDayAnswer> list(Caller caller) {
        return days.list(caller);
    }

    @GetMapping("/{id}")
    ResponseEntity<LabDayAnswer> show(@PathVariable UUID id, Caller caller) {
        return tagged(days.show(id, caller));
    }

    @PutMapping("/{id}")
    ResponseEntity<LabDayAnswer> put(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String seen,
            @RequestBody LabDayRequest request,
            Caller caller) {
        return tagged(
                seen == null
                        ? days.put(id, request, caller, clock.instant())
                        : changes.edit(id, request, VersionTag.read(seen), caller, clock.instant()));
    }

    @PutMapping("/{id}/entry")
    ResponseEntity<LabDayAnswer> setEntry(@PathVariable UUID id, @RequestBody EntryRequest request, Caller caller) {
        return tagged(changes.setEntry(id, request, caller, clock.instant()));
    }

    @PutMapping("/{id}/final")
    ResponseEntity<LabDayAnswer> setFinal(@PathVariable UUID id, @RequestBody FinalRequest request, Caller caller) {
        return tagged(changes.setFinal(id, request, caller, clock.instant()));
    }

    @PutMapping("/{id}/retention")
    ResponseEntity<LabDayAnswer> keep(@PathVariable UUID id, @RequestBody RetentionRequest request, Caller caller) {
        return tagged(changes.keep(id, request, caller, clock.instant()));
    }

    private static ResponseEntity<LabDayAnswer> tagged(LabDayAnswer day) {
        return ResponseEntity.ok().eTag(VersionTag.of(day.version())).body(day);
    }
}
