package org.berrywatt.server.live;

import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.server.platform.Refusal;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.messaging.simp.SimpMessagingTemplate;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;

/**
 * The feeds of one kind, of all lab days that somebody asked for or that changed since the server started.
 *
 * @param <S> the state that these feeds bring
 */
final class Feeds<S> implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Feeds.class);
    private static final Duration AT_MOST_EVERY = Duration.ofMillis(500);
    private static final Duration BEAT = Duration.ofSeconds(10);

    private final String epoch = UUID.randomUUID().toString();
    private final ConcurrentMap<UUID, Paced<S>> feeds = new ConcurrentHashMap<>();
    private final Function<UUID, Subject<S>> subjectOf;
    private final SimpMessagingTemplate broker;
    private final ThreadPoolTaskScheduler scheduler;
    private final ScheduledFuture<?> beats;

    private record Paced<S>(Feed<S> feed, Pace pace) {}

    /** @param subjectOf what to tell of a lab day */
    Feeds(Function<UUID, Subject<S>> subjectOf, SimpMessagingTemplate broker, ThreadPoolTaskScheduler scheduler) {
        this.subjectOf = subjectOf;
        this.broker = broker;
        this.scheduler = scheduler;
        this.beats = scheduler.scheduleAtFixedRate(this::beat, BEAT);
    }

    /** The state of a lab day that exists, as recorded now, with the number under which subscribers know it. */
    LiveMessage snapshot(UUID labDayId) {
        return of(labDayId).feed().snapshot();
    }

    /** Something of the day has changed: subscribers hear of it at once, or half a second after the last time. */
    void changed(UUID labDayId) {
        Paced<S> day = of(labDayId);
        day.feed().touch();
        day.pace().ask();
    }

    private void beat() {
        feeds.forEach((labDayId, day) -> carefully(labDayId, day.feed()::beat));
    }

    private void refresh(UUID labDayId, Feed<S> feed) {
        carefully(labDayId, feed::refresh);
    }

    private Paced<S> of(UUID labDayId) {
        return feeds.computeIfAbsent(labDayId, this::open);
    }

    private Paced<S> open(UUID labDayId) {
        Subject<S> subject = subjectOf.apply(labDayId);
        String topic = LabDayTopic.of(labDayId, subject.kind());
        Feed<S> feed = new Feed<>(epoch, subject, message -> broker.convertAndSend(topic, message));
        return new Paced<>(feed, new Pace(this::later, System::nanoTime, AT_MOST_EVERY, () -> refresh(labDayId, feed)));
    }

    private void later(Runnable task, long delay, TimeUnit unit) {
        CompletableFuture.delayedExecutor(delay, unit, scheduler).execute(task);
    }

    @Override
    public void destroy() {
        beats.cancel(false);
    }

    /** A day that cannot be computed must not silence the others; the next beat tries again, unless the day is gone. */
    private void carefully(UUID labDayId, Runnable step) {
        try {
            step.run();
        } catch (Refusal dayIsGone) {
            feeds.remove(labDayId);
        } catch (RuntimeException e) {
            LOG.warn("A live topic of lab day {} could not be brought up to date.", labDayId, e);
        }
    }
}
