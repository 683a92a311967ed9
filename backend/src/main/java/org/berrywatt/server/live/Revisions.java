package org.berrywatt.server.live;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Counts the changes of each lab day, in the database, so that servers beside each other count as one. A count is the sum of
 * its shares, one for each process of the database, so that those who change a day at the same moment do not wait for one
 * another's commit. It begins at the present time in milliseconds, which is share 0, so that it also grows when it begins
 * anew: no day changes a thousand times a second.
 */
@Component
class Revisions implements InitializingBean {

    private static final int SHARES = 64;
    private static final String GROW = """
            insert into live_revision values (?, 1 + pg_backend_pid() %% %d, 1)
            on conflict (lab_day_id, share) do update set revision = live_revision.revision + 1
            """.formatted(SHARES);
    private static final String SUM =
            "select sum(revision) from live_revision where lab_day_id = ? having bool_or(share = 0)";

    private final JdbcClient database;
    private final Clock clock;

    Revisions(JdbcClient database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** A server that starts may do so on restored data, where a page that waited knows a greater revision. */
    @Override
    public void afterPropertiesSet() {
        database.sql("delete from live_revision").update();
    }

    long of(UUID labDayId) {
        return find(labDayId).orElseGet(() -> begin(labDayId));
    }

    void grow(UUID labDayId) {
        database.sql(GROW).param(labDayId).update();
    }

    void forget(UUID labDayId) {
        database.sql("delete from live_revision where lab_day_id = ?")
                .param(labDayId)
                .update();
    }

    private Optional<Long> find(UUID labDayId) {
        return database.sql(SUM).param(labDayId).query(Long.class).optional();
    }

    private long begin(UUID labDayId) {
        database.sql("insert into live_revision values (?, 0, ?) on conflict do nothing")
                .params(labDayId, clock.millis())
                .update();
        return find(labDayId).orElseThrow();
    }
}
