package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.LiveMessage;
import org.junit.jupiter.api.Test;

class FeedTest {

    private static final UUID DAY = UUID.fromString("5b0e9d0c-0000-4000-8000-000000000001");

    private final List<LiveMessage> published = new ArrayList<>();
    private boolean databaseGone;
    private String title = "Morning";
    private final Feed feed = new Feed("e1", this::state, published::add);

    @Test
    void numbersStatesFromOne() {
        feed.refresh();
        title = "Noon";
        feed.refresh();

        assertThat(published).extracting(LiveMessage::seq).containsExactly(1L, 2L);
        assertThat(published).extracting(LiveMessage::body).containsExactly(titled("Morning"), titled("Noon"));
    }

    @Test
    void keepsSilentWhenNothingChanged() {
        feed.refresh();
        feed.refresh();

        assertThat(published).hasSize(1);
    }

    @Test
    void publishesWhatASnapshotFindsNew() {
        LiveMessage snapshot = feed.snapshot();

        assertThat(published).containsExactly(snapshot);
        assertThat(feed.snapshot()).isEqualTo(snapshot);
        assertThat(published).hasSize(1);
    }

    @Test
    void beatsWithTheNumberReached() {
        feed.refresh();

        feed.beat();

        assertThat(published).last().isEqualTo(new LiveMessage("e1", 1, "beat", null));
    }

    @Test
    void looksAgainAtTheBeatAfterAFailure() {
        databaseGone = true;
        assertThatIllegalStateException().isThrownBy(feed::refresh);
        databaseGone = false;

        feed.beat();

        assertThat(published).extracting(LiveMessage::kind).containsExactly("leaderboard", "beat");
        assertThat(published).extracting(LiveMessage::seq).containsExactly(1L, 1L);
    }

    private LeaderboardState state() {
        if (databaseGone) {
            throw new IllegalStateException("no database");
        }
        return titled(title);
    }

    private static LeaderboardState titled(String title) {
        return new LeaderboardState(DAY, title, "medianOfDeclared", 1000, 4, true, List.of());
    }
}
