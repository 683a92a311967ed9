package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.time.Duration;
import java.util.UUID;
import org.awaitility.pollinterval.IterativePollInterval;
import org.awaitility.pollinterval.PollInterval;

/** Sends as a phone's outbox does: each reading under an id of its own, again and again until it is acknowledged. */
record Outbox(Browser phone) {

    private static final Duration PATIENCE = Duration.ofMinutes(10);
    private static final Duration LONGEST_PAUSE = Duration.ofSeconds(4);
    private static final PollInterval LONGER_EACH_TIME =
            IterativePollInterval.iterative(pause -> longer(pause), Duration.ofMillis(100));

    /** The id of the reading, once it was acknowledged. */
    UUID deliver(String reading) {
        var id = UUID.randomUUID();
        await().atMost(PATIENCE)
                .pollInSameThread()
                .pollDelay(Duration.ZERO)
                .pollInterval(LONGER_EACH_TIME)
                .until(() -> isAcknowledged(id, reading));
        return id;
    }

    private static Duration longer(Duration pause) {
        return pause.compareTo(LONGEST_PAUSE) < 0 ? pause.multipliedBy(2) : pause;
    }

    private boolean isAcknowledged(UUID id, String reading) throws InterruptedException {
        try {
            var answer = phone.put("/api/readings/" + id, reading);
            assertThat(answer.statusCode())
                    .as(answer.body())
                    .satisfiesAnyOf(
                            status -> assertThat(status).isEqualTo(200),
                            status -> assertThat(status).isGreaterThanOrEqualTo(500));
            return answer.statusCode() == 200;
        } catch (IOException noAnswer) {
            return false;
        }
    }
}
