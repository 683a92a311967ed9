package org.berrywatt.server.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.berrywatt.server.access.Caller;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;

/**
 * The demo day entered again in three minutes, so that the Wall moves. Each replay is a lab day of its own beside the whole
 * one. Entries keep the time of day at which they were made, since results depend on the time between readings.
 */
@Component
class Replay implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Replay.class);
    private static final Duration LENGTH = Duration.ofMinutes(3);

    private final DemoClass demoClass;
    private final Clock clock;
    private final ExecutorService hand = Executors.newSingleThreadExecutor(task -> new Thread(task, "demo-replay"));
    private @Nullable UUID labDayId;

    Replay(DemoClass demoClass, Clock clock) {
        this.demoClass = demoClass;
        this.clock = clock;
    }

    /** Begins a new lab day that fills during the next three minutes. */
    void start(Caller.Teacher teacher) {
        List<Entry> afternoon = Afternoon.under(Names.replayedAt(clock.instant()));
        UUID id = afternoon.get(0).id();
        demoClass.enter(afternoon.get(0), id, teacher);
        afternoon.stream()
                .skip(1)
                .forEach(entry -> after(delay(entry, afternoon)).execute(() -> enter(entry, id, teacher)));
        labDayId = id;
    }

    /** The day that was begun, if any. */
    Optional<UUID> labDayId() {
        return Optional.ofNullable(labDayId);
    }

    private Executor after(Duration delay) {
        return CompletableFuture.delayedExecutor(delay.toMillis(), TimeUnit.MILLISECONDS, hand);
    }

    private void enter(Entry entry, UUID id, Caller.Teacher teacher) {
        try {
            demoClass.enter(entry, id, teacher);
        } catch (RuntimeException e) {
            LOG.warn("The replay left out an entry of {}.", entry.at(), e);
        }
    }

    /** The same part of the three minutes as of the afternoon. */
    static Duration delay(Entry entry, List<Entry> afternoon) {
        Instant start = afternoon.get(0).at();
        Duration whole =
                Duration.between(start, afternoon.get(afternoon.size() - 1).at());
        double part = (double) Duration.between(start, entry.at()).toMillis() / whole.toMillis();
        return Duration.ofMillis(Math.round(part * LENGTH.toMillis()));
    }

    @Override
    public void destroy() {
        hand.shutdownNow();
    }
}
