package org.berrywatt.server.logger;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import org.berrywatt.contract.LoggedAnswer;
import org.berrywatt.contract.LoggedRequest;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The only door that a device's token opens. It asks for no cookie, so that there is nothing to forge. */
@RestController
class LoggerDoor {

    private final Gatekeeper gate;
    private final LoggedReadings readings;
    private final Clock clock;

    LoggerDoor(Gatekeeper gate, LoggedReadings readings, Clock clock) {
        this.gate = gate;
        this.readings = readings;
        this.clock = clock;
    }

    @PostMapping("/api/logger/readings")
    LoggedAnswer take(@RequestBody LoggedRequest reading, HttpServletRequest request) {
        return readings.take(gate.admit(request), reading, clock.instant());
    }
}
