package org.berrywatt.server.live;

import java.util.UUID;
import java.util.function.Consumer;
import org.berrywatt.contract.LiveMessage;

/**
 * One live topic of one lab day, also when several servers tell of that day. A state gets the number after the one that was
 * reached before it was computed, and only if nobody else took that number meanwhile: so a greater number never brings an
 * older state, and a snapshot never disagrees with the message of the same number.
 *
 * @param <S> the state that the topic brings; states with equal prints are the same news
 */
final class Feed<S> {

    private final UUID labDayId;
    private final Subject<S> subject;
    private final FeedNumbers numbers;
    private final Revisions revisions;
    private final Consumer<LiveMessage> topic;
    private long lookedAt;

    /** @param topic takes each message to the subscribers; what it loses they miss, and fetch a snapshot */
    Feed(UUID labDayId, Subject<S> subject, FeedNumbers numbers, Revisions revisions, Consumer<LiveMessage> topic) {
        this.labDayId = labDayId;
        this.subject = subject;
        this.numbers = numbers;
        this.revisions = revisions;
        this.topic = topic;
    }

    /** The state as recorded now; subscribers hear of it under the next number if it is new. */
    synchronized LiveMessage look() {
        long revision = revisions.of(labDayId); // first, so that a change meanwhile is looked at again
        LiveMessage message = numbered();
        lookedAt = revision;
        return message;
    }

    /**
     * Tells subscribers the number reached, after looking at what was not looked at here: the last look failed, or another
     * server ended before it told of a change.
     */
    synchronized void beat() {
        if (revisions.of(labDayId) != lookedAt) {
            look();
        }
        FeedNumber reached = numbers.reached(labDayId, subject.kind());
        topic.accept(new LiveMessage(reached.epoch().toString(), reached.seq(), "beat", null));
    }

    /** The day is gone. */
    void forget() {
        numbers.forget(labDayId);
        revisions.forget(labDayId);
    }

    private LiveMessage numbered() {
        while (true) {
            FeedNumber reached = numbers.reached(labDayId, subject.kind());
            S present = subject.state().get();
            String print = numbers.print(present);
            if (print.equals(reached.print())) {
                return message(reached, present);
            }
            if (numbers.advance(labDayId, subject.kind(), reached, print)) {
                return told(message(reached.next(print), present));
            }
        }
    }

    private LiveMessage told(LiveMessage news) {
        topic.accept(news);
        return news;
    }

    private LiveMessage message(FeedNumber number, S present) {
        return new LiveMessage(
                number.epoch().toString(),
                number.seq(),
                subject.kind(),
                subject.body().apply(present));
    }
}
