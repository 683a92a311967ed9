package org.berrywatt.server.logger;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LoggerAnswer;
import org.berrywatt.contract.LoggerRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Devices over HTTP, for teachers. */
@RestController
@RequestMapping("/api")
class LoggerController {

    private final Loggers loggers;
    private final Clock clock;

    LoggerController(Loggers loggers, Clock clock) {
        this.loggers = loggers;
        this.clock = clock;
    }

    @PostMapping("/labdays/{labDayId}/loggers")
    LoggerAnswer make(@PathVariable UUID labDayId, @RequestBody LoggerRequest request, Caller caller) {
        return loggers.make(labDayId, request, caller, clock.instant());
    }

    @GetMapping("/labdays/{labDayId}/loggers")
    List<LoggerAnswer> list(@PathVariable UUID labDayId, Caller caller) {
        return loggers.list(labDayId, caller);
    }

    @PutMapping("/loggers/{id}/revocation")
    LoggerAnswer revoke(@PathVariable UUID id, Caller caller) {
        return loggers.revoke(id, caller, clock.instant());
    }
}
