package org.berrywatt.server.live;

import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.platform.Refusal;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.messaging.simp.SimpMessagingTemplate;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;
import org.springframework.stereotype.Service;

/** The feeds of all lab days that somebody asked for or that changed since the server started. */
@Service
class Feeds implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Feeds.class);
    private static final Duration AT_MOST_EVERY = Duration.ofMillis(500);
    private static final Duration BEAT = Duration.ofSeconds(10);

    private final String epoch = UUID.randomUUID().toString();
    private final ConcurrentMap<UUID, Paced> feeds = new ConcurrentHashMap<>();
    private final LabDays labDays;
    private final Leaderboards leaderboards;
    private final SimpMessagingTemplate broker;
    private final ThreadPoolTaskScheduler scheduler;
    private final ScheduledFuture<?> beats;

    private record Paced(Feed feed, Pace pace) {}

    Feeds(
            LabDays labDays,
            Leaderboards leaderboards,
            SimpMessagingTemplate broker,
            @Qualifier("live") ThreadPoolTaskScheduler scheduler) {
        this.labDays = labDays;
        this.leaderboards = leaderboards;
        this.broker = broker;
        this.scheduler = scheduler;
        this.beats = scheduler.scheduleAtFixedRate(this::beat, BEAT);
    }

    /**
     * The leaderboard as recorded now with the number under which subscribers know it.
     *
     * @throws Refusal {@code notFound} if there is no such lab day
     */
    LiveMessage snapshot(UUID labDayId) {
        LabDay day = labDays.find(labDayId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        return of(day.id()).feed().snapshot();
    }

    /** Something of the day has changed: subscribers hear of it at once, or half a second after the last time. */
    void changed(UUID labDayId) {
        Paced day = of(labDayId);
        day.feed().touch();
        day.pace().ask();
    }

    private void beat() {
        feeds.forEach((labDayId, day) -> carefully(labDayId, day.feed()::beat));
    }

    private Paced of(UUID labDayId) {
        return feeds.computeIfAbsent(labDayId, this::open);
    }

    private Paced open(UUID labDayId) {
        String topic = LeaderboardTopic.of(labDayId);
        Feed feed = new Feed(epoch, () -> leaderboards.of(labDayId), message -> broker.convertAndSend(topic, message));
        Runnable refresh = () -> carefully(labDayId, feed::refresh);
        return new Paced(feed, new Pace(this::later, System::nanoTime, AT_MOST_EVERY, refresh));
    }

    private void later(Runnable task, long delay, TimeUnit unit) {
        CompletableFuture.delayedExecutor(delay, unit, scheduler).execute(task);
    }

    @Override
    public void destroy() {
        beats.cancel(false);
    }

    /** A day that cannot be computed must not silence the others; the next beat tries again. */
    private static void carefully(UUID labDayId, Runnable step) {
        try {
            step.run();
        } catch (RuntimeException e) {
            LOG.warn("The live leaderboard of lab day {} could not be brought up to date.", labDayId, e);
        }
    }
}
