package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import org.berrywatt.contract.LiveMessage;
import org.junit.jupiter.api.Test;

class FeedTest {

    private final List<LiveMessage> published = new ArrayList<>();
    private boolean databaseGone;
    private String title = "Morning";
    private String noted = "";
    private final Feed<String> feed =
            new Feed<>("e1", new Subject<>("leaderboard", this::state, state -> state + noted), published::add);

    @Test
    void numbersStatesFromOne() {
        feed.refresh();
        title = "Noon";
        feed.refresh();

        assertThat(published).extracting(LiveMessage::seq).containsExactly(1L, 2L);
        assertThat(published).extracting(LiveMessage::body).containsExactly("Morning", "Noon");
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
    void saysOfAnUnchangedStateWhatHoldsWhenASnapshotLeaves() {
        feed.refresh();
        noted = " at ten";

        LiveMessage snapshot = feed.snapshot();

        assertThat(published).extracting(LiveMessage::body).containsExactly("Morning");
        assertThat(snapshot).isEqualTo(new LiveMessage("e1", 1, "leaderboard", "Morning at ten"));
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

    private String state() {
        if (databaseGone) {
            throw new IllegalStateException("no database");
        }
        return title;
    }
}
