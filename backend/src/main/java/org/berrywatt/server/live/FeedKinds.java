package org.berrywatt.server.live;

import java.time.Clock;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.messaging.simp.SimpMessagingTemplate;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;

/** The two kinds of feed: the leaderboard, and the room with all that is quick to tell. */
@Configuration(proxyBeanMethods = false)
class FeedKinds {

    @Bean
    Feeds<LeaderboardState> leaderboardFeeds(
            Leaderboards leaderboards,
            FeedNumbers numbers,
            Revisions revisions,
            SimpMessagingTemplate broker,
            @Qualifier("live") ThreadPoolTaskScheduler scheduler) {
        return new Feeds<>(
                day -> new Subject<>("leaderboard", () -> leaderboards.of(day), state -> state),
                numbers,
                revisions,
                broker,
                scheduler);
    }

    @Bean
    Feeds<Room> roomFeeds(
            Rooms rooms,
            Clock clock,
            FeedNumbers numbers,
            Revisions revisions,
            SimpMessagingTemplate broker,
            @Qualifier("live") ThreadPoolTaskScheduler scheduler) {
        return new Feeds<>(
                day -> new Subject<>("room", () -> rooms.of(day), room -> room.at(clock.instant())),
                numbers,
                revisions,
                broker,
                scheduler);
    }
}
