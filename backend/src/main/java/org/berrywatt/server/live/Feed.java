package org.berrywatt.server.live;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.LiveMessage;
import org.jspecify.annotations.Nullable;

/**
 * The live leaderboard of one lab day. Computing, numbering and publishing happen under one lock, so that states leave in
 * the order of their numbers and a snapshot never disagrees with the message of the same number.
 */
final class Feed {

    private final String epoch;
    private final Supplier<LeaderboardState> leaderboard;
    private final Consumer<LiveMessage> topic;
    private volatile boolean stale = true;
    private @Nullable LeaderboardState state;
    private long seq;

    /**
     * @param epoch name of this run of the server
     * @param leaderboard computes the state from what is recorded now
     * @param topic takes each message to the subscribers
     */
    Feed(String epoch, Supplier<LeaderboardState> leaderboard, Consumer<LiveMessage> topic) {
        this.epoch = epoch;
        this.leaderboard = leaderboard;
        this.topic = topic;
    }

    /** Something of the day has changed; the next {@link #refresh} will look. */
    void touch() {
        stale = true;
    }

    /** Publishes the state under the next number if it differs from the last one. */
    synchronized void refresh() {
        stale = false;
        try {
            publishIfNew(leaderboard.get());
        } catch (RuntimeException e) {
            stale = true;
            throw e;
        }
    }

    /** The state as recorded now; subscribers hear of it too if it is new. */
    synchronized LiveMessage snapshot() {
        refresh();
        return message();
    }

    /** Tells subscribers the number reached, after looking again where the last look failed. */
    synchronized void beat() {
        if (stale) {
            refresh();
        }
        topic.accept(new LiveMessage(epoch, seq, "beat", null));
    }

    private void publishIfNew(LeaderboardState present) {
        if (!present.equals(state)) {
            state = present;
            seq++;
            topic.accept(message());
        }
    }

    private LiveMessage message() {
        return new LiveMessage(epoch, seq, "leaderboard", state);
    }
}
