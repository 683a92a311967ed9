package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@ServerTest
class FeedTest {

    private final FeedNumbers numbers;
    private final Revisions revisions;
    private final JdbcClient database;
    private final UUID day = UUID.randomUUID();
    private final List<LiveMessage> published = new ArrayList<>();
    private boolean databaseGone;
    private String title = "Morning";
    private String noted = "";
    private Feed<String> feed;

    @Autowired
    FeedTest(FeedNumbers numbers, Revisions revisions, JdbcClient database) {
        this.numbers = numbers;
        this.revisions = revisions;
        this.database = database;
        this.feed = feed(this::state);
    }

    @BeforeEach
    void changes() {
        revisions.grow(day);
    }

    @Test
    void numbersStatesFromOne() {
        feed.look();
        title = "Noon";
        feed.look();

        assertThat(published).extracting(LiveMessage::seq).containsExactly(1L, 2L);
        assertThat(published).extracting(LiveMessage::body).containsExactly("Morning", "Noon");
    }

    @Test
    void keepsSilentWhenNothingChanged() {
        feed.look();
        feed.look();

        assertThat(published).hasSize(1);
    }

    @Test
    void publishesWhatASnapshotFindsNew() {
        LiveMessage snapshot = feed.look();

        assertThat(published).containsExactly(snapshot);
        assertThat(feed.look()).isEqualTo(snapshot);
        assertThat(published).hasSize(1);
    }

    @Test
    void saysOfAnUnchangedStateWhatHoldsWhenASnapshotLeaves() {
        feed.look();
        noted = " at ten";

        LiveMessage snapshot = feed.look();

        assertThat(published).extracting(LiveMessage::body).containsExactly("Morning");
        assertThat(snapshot).isEqualTo(new LiveMessage(snapshot.epoch(), 1, "leaderboard", "Morning at ten"));
    }

    @Test
    void beatsWithTheNumberReached() {
        LiveMessage reached = feed.look();

        feed.beat();

        assertThat(published).last().isEqualTo(new LiveMessage(reached.epoch(), 1, "beat", null));
    }

    @Test
    void looksAgainAtTheBeatAfterAFailure() {
        databaseGone = true;
        assertThatIllegalStateException().isThrownBy(feed::look);
        databaseGone = false;

        feed.beat();

        assertThat(published).extracting(LiveMessage::kind).containsExactly("leaderboard", "beat");
        assertThat(published).extracting(LiveMessage::seq).containsExactly(1L, 1L);
    }

    @Test
    void countsOnFromWhatAnotherServerTold() {
        LiveMessage first = feed.look();
        title = "Noon";

        LiveMessage second = feed(this::state).look();

        assertThat(second.epoch()).isEqualTo(first.epoch());
        assertThat(second.seq()).isEqualTo(2);
        assertThat(feed.look()).isEqualTo(second);
        assertThat(published).hasSize(2);
    }

    @Test
    void looksAgainWhenAnotherServerTookTheNumberMeanwhile() {
        Feed<String> slower = feed(() -> {
            String seen = title;
            if (seen.equals("Morning")) {
                title = "Noon";
                feed.look();
            }
            return seen;
        });

        LiveMessage told = slower.look();

        assertThat(published).extracting(LiveMessage::body).containsExactly("Noon");
        assertThat(told.body()).isEqualTo("Noon");
    }

    @Test
    void looksAtTheBeatAtWhatAServerAcceptedThatEndedBeforeItTold() {
        feed.beat();
        title = "Noon";
        revisions.grow(day);

        feed.beat();

        assertThat(published).extracting(LiveMessage::body).contains("Noon");
    }

    @Test
    void beginsANewEpochWhenTheDatabaseLostTheNumbers() {
        LiveMessage before = feed.look();
        database.sql("delete from live_feed where lab_day_id = ?").param(day).update();

        LiveMessage after = feed.look();

        assertThat(after.epoch()).isNotEqualTo(before.epoch());
        assertThat(after.seq()).isEqualTo(1);
    }

    @Test
    void keepsNothingOfADayThatIsGone() {
        feed.look();

        feed.forget();

        assertThat(rows("live_feed") + rows("live_revision")).isZero();
    }

    private Feed<String> feed(Supplier<String> state) {
        var subject = new Subject<>("leaderboard", state, text -> text + noted);
        return new Feed<>(day, subject, numbers, revisions, published::add);
    }

    private long rows(String table) {
        return database.sql("select count(*) from " + table + " where lab_day_id = ?")
                .param(day)
                .query(Long.class)
                .single();
    }

    private String state() {
        if (databaseGone) {
            throw new IllegalStateException("no database");
        }
        return title;
    }
}
