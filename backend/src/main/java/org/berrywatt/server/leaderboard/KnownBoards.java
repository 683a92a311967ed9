package org.berrywatt.server.leaderboard;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.UUID;
import org.berrywatt.leaderboard.Board;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.Terms;
import org.springframework.stereotype.Component;

/** Remembers the last board of a day, so that one new reading recounts one team. The board is the same as one made anew. */
@Component
class KnownBoards {

    private static final int MOST_DAYS = 4;

    private final Cache<UUID, DayBoard> boards =
            Caffeine.newBuilder().maximumSize(MOST_DAYS).build();

    Board board(UUID labDayId, Terms terms, List<TeamCells> teams) {
        return boards.asMap()
                .compute(labDayId, (id, last) -> last == null ? DayBoard.of(terms, teams) : last.now(terms, teams))
                .board();
    }
}
