package org.berrywatt.server.plan;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.PlanAnswer;
import org.berrywatt.contract.PlanChangeRequest;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.contract.PlannedCellRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.VersionTag;
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

/** Plans over HTTP; the {@code ETag} of a plan is the number of its version. */
@RestController
@RequestMapping("/api")
class PlanController {

    private final Plans plans;
    private final Clock clock;

    PlanController(Plans plans, Clock clock) {
        this.plans = plans;
        this.clock = clock;
    }

    @GetMapping("/labdays/{labDayId}/plan")
    ResponseEntity<PlanAnswer> show(@PathVariable UUID labDayId, Caller caller) {
        return tagged(plans.show(labDayId, caller));
    }

    @PutMapping("/labdays/{labDayId}/plan/versions/{id}")
    ResponseEntity<PlanAnswer> save(
            @PathVariable UUID labDayId,
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String seen,
            @RequestBody PlanRequest request,
            Caller caller) {
        return tagged(plans.save(id, labDayId, request, version(seen), caller, clock.instant()));
    }

    @PutMapping("/labdays/{labDayId}/plan/changes/{id}")
    ResponseEntity<PlanAnswer> change(
            @PathVariable UUID labDayId,
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String seen,
            @RequestBody PlanChangeRequest request,
            Caller caller) {
        return tagged(plans.change(id, labDayId, request, version(seen), caller, clock.instant()));
    }

    @GetMapping("/labdays/{labDayId}/plan/cells")
    List<PlannedCellAnswer> cells(@PathVariable UUID labDayId, Caller caller) {
        return plans.cells(labDayId, caller);
    }

    @PutMapping("/planned-cells/{id}")
    PlannedCellRequest note(@PathVariable UUID id, @RequestBody PlannedCellRequest request, Caller caller) {
        return plans.note(id, request, caller, clock.instant());
    }

    /** Who names no version saw none. */
    private static long version(@Nullable String tag) {
        return tag == null ? 0 : VersionTag.read(tag);
    }

    private static ResponseEntity<PlanAnswer> tagged(PlanAnswer plan) {
        return ResponseEntity.ok().eTag(VersionTag.of(plan.version())).body(plan);
    }
}
