package org.berrywatt.server.live;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.server.platform.Refusal;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.messaging.MessagingException;
import org.springframework.messaging.simp.SimpMessagingTemplate;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;

/**
 * The feeds of one kind, of all lab days that somebody asked for or that changed of late.
 *
 * @param <S> the state that these feeds bring
 */
final class Feeds<S> implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Feeds.class);
    private static final Duration AT_MOST_EVERY = Duration.ofMillis(500);
    private static final Duration BEAT = Duration.ofSeconds(10);
    private static final Duration QUIET_DAY_IS_OVER = Duration.ofHours(12);

    private final Cache<UUID, Paced<S>> feeds =
            Caffeine.newBuilder().expireAfterAccess(QUIET_DAY_IS_OVER).build();
    private final Function<UUID, Subject<S>> subjectOf;
    private final FeedNumbers numbers;
    private final Revisions revisions;
    private final SimpMessagingTemplate broker;
    private final ThreadPoolTaskScheduler scheduler;
    private final ScheduledFuture<?> beats;
    private volatile boolean ended;

    private record Paced<S>(Feed<S> feed, Pace pace) {}

    /** @param subjectOf what to tell of a lab day */
    Feeds(
            Function<UUID, Subject<S>> subjectOf,
            FeedNumbers numbers,
            Revisions revisions,
            SimpMessagingTemplate broker,
            ThreadPoolTaskScheduler scheduler) {
        this.subjectOf = subjectOf;
        this.numbers = numbers;
        this.revisions = revisions;
        this.broker = broker;
        this.scheduler = scheduler;
        this.beats = scheduler.scheduleAtFixedRate(this::beat, BEAT);
    }

    /** The state of a lab day that exists, as recorded now, with the number under which subscribers know it. */
    LiveMessage snapshot(UUID labDayId) {
        return of(labDayId).feed().look();
    }

    /** Something of the day has changed: subscribers hear of it at once, or at its {@link Pace}. */
    void changed(UUID labDayId) {
        of(labDayId).pace().ask();
    }

    private void beat() {
        feeds.asMap().forEach((labDayId, day) -> carefully(labDayId, day.feed(), Feed::beat));
    }

    private Paced<S> of(UUID labDayId) {
        return feeds.get(labDayId, this::open);
    }

    private Paced<S> open(UUID labDayId) {
        Subject<S> subject = subjectOf.apply(labDayId);
        String topic = LabDayTopic.of(labDayId, subject.kind());
        Feed<S> feed = new Feed<>(labDayId, subject, numbers, revisions, message -> tell(topic, message));
        Runnable refresh = () -> carefully(labDayId, feed, Feed::look);
        return new Paced<>(feed, new Pace(this::later, System::nanoTime, AT_MOST_EVERY, refresh));
    }

    /** A broker that is away is no reason to refuse a snapshot; the first beat after it came back tells what was missed. */
    private void tell(String topic, LiveMessage message) {
        try {
            broker.convertAndSend(topic, message);
        } catch (MessagingException brokerIsAway) {
            LOG.debug("{} was not told number {}.", topic, message.seq(), brokerIsAway);
        }
    }

    private void later(Runnable task, long delay, TimeUnit unit) {
        CompletableFuture.delayedExecutor(delay, unit, scheduler).execute(task);
    }

    @Override
    public void destroy() {
        ended = true;
        beats.cancel(false);
    }

    /** A look that meets the end of the server is no news. */
    private void warn(UUID labDayId, RuntimeException failure) {
        if (!ended) {
            LOG.warn("A live topic of lab day {} could not be brought up to date.", labDayId, failure);
        }
    }

    /** A day that cannot be computed must not silence the others; the next beat tries again, unless the day is gone. */
    private void carefully(UUID labDayId, Feed<S> feed, Consumer<Feed<S>> step) {
        try {
            step.accept(feed);
        } catch (Refusal dayIsGone) {
            feeds.invalidate(labDayId);
            feed.forget();
        } catch (RuntimeException e) {
            warn(labDayId, e);
        }
    }
}
