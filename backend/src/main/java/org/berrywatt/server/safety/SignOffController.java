package org.berrywatt.server.safety;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.SignOffAnswer;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.SignOffsAnswer;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Sign-offs over HTTP. */
@RestController
@RequestMapping("/api")
class SignOffController {

    private final Safety safety;
    private final Clock clock;

    SignOffController(Safety safety, Clock clock) {
        this.safety = safety;
        this.clock = clock;
    }

    @PutMapping("/sign-offs/{id}")
    SignOffAnswer put(@PathVariable UUID id, @RequestBody SignOffRequest request, Caller caller) {
        return safety.putSignOff(id, request, caller, clock.instant());
    }

    @PutMapping("/sign-offs/{id}/withdrawal")
    SignOffAnswer withdraw(@PathVariable UUID id, Caller caller) {
        return safety.withdraw(id, caller, clock.instant());
    }

    @GetMapping("/labdays/{labDayId}/sign-offs")
    SignOffsAnswer list(@PathVariable UUID labDayId, Caller caller) {
        return new SignOffsAnswer(clock.instant(), safety.list(labDayId, caller));
    }
}
