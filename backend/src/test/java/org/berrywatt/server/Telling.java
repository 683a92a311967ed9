package org.berrywatt.server;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.berrywatt.contract.LiveMessage;
import org.springframework.messaging.simp.SimpMessagingTemplate;
import tools.jackson.databind.json.JsonMapper;

/** One reading told to a room, and the same payload broadcast barely. */
final class Telling {

    private static final long QUIET_MS = 700;
    private static final long PATIENCE_S = 30;
    private final SchoolDay day;
    private final SimpMessagingTemplate broker;
    private int cell;

    Telling(SchoolDay day, SimpMessagingTemplate broker) {
        this.day = day;
        this.broker = broker;
    }

    String topic() {
        return "/topic/labday." + day.id() + ".leaderboard";
    }

    /**
     * From the acceptance of a cell's first reading after a quiet time until the last listener has the new leaderboard.
     *
     * @param phone of the team whose turn it is
     */
    double tellMs(Listeners ears, Browser phone) throws IOException, InterruptedException {
        LiveMessage before = snapshot(phone);
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(QUIET_MS));
        ears.expect(before.seq() + 1);
        day.send(phone, cell, cell);
        cell++;
        return untilAll(ears, System.nanoTime());
    }

    /** The same payload under a number that nobody counts. */
    double bareMs(Listeners ears, Browser phone, long seq) throws IOException, InterruptedException {
        LiveMessage payload = snapshot(phone);
        ears.expect(seq);
        long start = System.nanoTime();
        broker.convertAndSend(topic(), new LiveMessage(payload.epoch(), seq, payload.kind(), payload.body()));
        return untilAll(ears, start);
    }

    int payloadBytes(Browser phone) throws IOException, InterruptedException {
        return new JsonMapper().writeValueAsBytes(snapshot(phone)).length;
    }

    private LiveMessage snapshot(Browser phone) throws IOException, InterruptedException {
        String body = phone.get("/api/labdays/" + day.id() + "/leaderboard").body();
        return new JsonMapper().readValue(body, LiveMessage.class);
    }

    private static double untilAll(Listeners ears, long start) throws InterruptedException {
        if (!ears.all(PATIENCE_S)) {
            throw new IllegalStateException("not everybody heard it within " + PATIENCE_S + " s");
        }
        return (System.nanoTime() - start) / 1e6;
    }
}
