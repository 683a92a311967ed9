package org.berrywatt.server.reading;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Readings over HTTP. */
@RestController
@RequestMapping("/api")
class ReadingController {

    private final Readings readings;
    private final Clock clock;

    ReadingController(Readings readings, Clock clock) {
        this.readings = readings;
        this.clock = clock;
    }

    @PutMapping("/readings/{id}")
    ReadingAnswer put(@PathVariable UUID id, @RequestBody ReadingRequest request, Caller caller) {
        return readings.put(id, request, caller, clock.instant());
    }

    @GetMapping("/cells/{cellId}/readings")
    List<ReadingAnswer> list(@PathVariable UUID cellId, Caller caller) {
        return readings.list(cellId, caller);
    }
}
