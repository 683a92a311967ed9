package org.berrywatt.server.live;

import java.util.Optional;
import java.util.UUID;
import org.berrywatt.server.platform.Fingerprint;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Numbers the states of all feeds, in the database, so that servers beside each other count as one. */
@Component
class FeedNumbers implements InitializingBean {

    private final JdbcClient database;
    private final Fingerprint fingerprint;

    FeedNumbers(JdbcClient database, Fingerprint fingerprint) {
        this.database = database;
        this.fingerprint = fingerprint;
    }

    /** A server that starts may do so on restored data, where a page that waited knows greater numbers. */
    @Override
    public void afterPropertiesSet() {
        database.sql("delete from live_feed").update();
    }

    /** Equal states have equal prints, on every server. */
    String print(Object state) {
        return fingerprint.of(state);
    }

    FeedNumber reached(UUID labDayId, String kind) {
        return find(labDayId, kind).orElseGet(() -> begin(labDayId, kind));
    }

    /** Takes the next number, unless somebody else took it since {@code reached} was read. */
    boolean advance(UUID labDayId, String kind, FeedNumber reached, String print) {
        return database.sql("update live_feed set seq = seq + 1, print = ?"
                                + " where lab_day_id = ? and kind = ? and epoch = ? and seq = ?")
                        .params(print, labDayId, kind, reached.epoch(), reached.seq())
                        .update()
                == 1;
    }

    void forget(UUID labDayId) {
        database.sql("delete from live_feed where lab_day_id = ?")
                .param(labDayId)
                .update();
    }

    private Optional<FeedNumber> find(UUID labDayId, String kind) {
        return database.sql("select epoch, seq, print from live_feed where lab_day_id = ? and kind = ?")
                .params(labDayId, kind)
                .query(FeedNumber.class)
                .optional();
    }

    private FeedNumber begin(UUID labDayId, String kind) {
        database.sql("insert into live_feed values (?, ?, gen_random_uuid(), 0, '') on conflict do nothing")
                .params(labDayId, kind)
                .update();
        return find(labDayId, kind).orElseThrow();
    }
}
