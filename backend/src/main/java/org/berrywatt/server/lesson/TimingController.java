package org.berrywatt.server.lesson;

import java.time.Clock;
import java.util.UUID;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotAnswer;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.TimerAnswer;
import org.berrywatt.contract.TimerExtensionRequest;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Timers and heaters over HTTP. */
@RestController
@RequestMapping("/api")
class TimingController {

    private final Timers timers;
    private final HeaterSlots heaters;
    private final Clock clock;

    TimingController(Timers timers, HeaterSlots heaters, Clock clock) {
        this.timers = timers;
        this.heaters = heaters;
        this.clock = clock;
    }

    @PutMapping("/timers/{id}")
    TimerAnswer start(@PathVariable UUID id, @RequestBody TimerRequest request, Caller caller) {
        return timers.put(id, request, caller, clock.instant());
    }

    @PutMapping("/timers/{id}/extensions/{extensionId}")
    TimerAnswer extend(
            @PathVariable UUID id,
            @PathVariable UUID extensionId,
            @RequestBody TimerExtensionRequest request,
            Caller caller) {
        return timers.extend(id, extensionId, request, caller, clock.instant());
    }

    @PutMapping("/timers/{id}/end")
    TimerAnswer stop(@PathVariable UUID id, Caller caller) {
        return timers.stop(id, caller, clock.instant());
    }

    @PutMapping("/heater-slots/{id}")
    HeaterSlotAnswer putIn(@PathVariable UUID id, @RequestBody HeaterSlotRequest request, Caller caller) {
        return heaters.put(id, request, caller, clock.instant());
    }

    @PutMapping("/heater-outs/{id}")
    HeaterSlotAnswer takeOut(@PathVariable UUID id, @RequestBody HeaterOutRequest request, Caller caller) {
        return heaters.takeOut(id, request, caller, clock.instant());
    }
}
