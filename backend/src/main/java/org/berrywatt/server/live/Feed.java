package org.berrywatt.server.live;

import java.util.function.Consumer;
import org.berrywatt.contract.LiveMessage;
import org.jspecify.annotations.Nullable;

/**
 * One live topic of one lab day. Computing, numbering and publishing happen under one lock, so that states leave in the
 * order of their numbers and a snapshot never disagrees with the message of the same number.
 *
 * @param <S> the state that the topic brings; equal states are the same news
 */
final class Feed<S> {

    private final String epoch;
    private final Subject<S> subject;
    private final Consumer<LiveMessage> topic;
    private volatile boolean stale = true;
    private @Nullable S state;
    private long seq;

    /**
     * @param epoch name of this run of the server
     * @param topic takes each message to the subscribers
     */
    Feed(String epoch, Subject<S> subject, Consumer<LiveMessage> topic) {
        this.epoch = epoch;
        this.subject = subject;
        this.topic = topic;
    }

    /** Something of the day has changed; the next {@link #refresh} will look. */
    void touch() {
        stale = true;
    }

    /** Publishes the state under the next number if it differs from the last one. */
    synchronized void refresh() {
        look();
    }

    /** The state as recorded now; subscribers hear of it too if it is new. */
    synchronized LiveMessage snapshot() {
        return message(look());
    }

    /** Tells subscribers the number reached, after looking again where the last look failed. */
    synchronized void beat() {
        if (stale) {
            look();
        }
        topic.accept(new LiveMessage(epoch, seq, "beat", null));
    }

    private S look() {
        stale = false;
        try {
            return publishedIfNew(subject.state().get());
        } catch (RuntimeException e) {
            stale = true;
            throw e;
        }
    }

    private S publishedIfNew(S present) {
        if (!present.equals(state)) {
            state = present;
            seq++;
            topic.accept(message(present));
        }
        return present;
    }

    private LiveMessage message(S present) {
        return new LiveMessage(epoch, seq, subject.kind(), subject.body().apply(present));
    }
}
