package org.berrywatt.server.live;

import jakarta.persistence.EntityManager;
import java.util.UUID;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.server.labday.DayChange;
import org.berrywatt.server.lesson.LessonChanged;
import org.berrywatt.server.safety.SafetyChanged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Hears what the features announce. The day's revision grows in the transaction of the change itself, once however much it
 * changes, so that no change is stored without telling that somebody must look; after the commit this server's subscribers
 * hear of it, those of others by the broker or, should this server end in between, at the next beat.
 */
@Component
class DayChanges {

    private final EntityManager store;
    private final Revisions revisions;
    private final Feeds<Room> rooms;
    private final Feeds<LeaderboardState> leaderboards;

    DayChanges(EntityManager store, Revisions revisions, Feeds<Room> rooms, Feeds<LeaderboardState> leaderboards) {
        this.store = store;
        this.revisions = revisions;
        this.rooms = rooms;
        this.leaderboards = leaderboards;
    }

    /** @throws IllegalStateException outside a transaction */
    @EventListener
    void on(DayChange change) {
        TransactionSynchronizationManager.registerSynchronization(
                new AtCommit(this, change.labDayId(), movesLeaderboard(change)));
    }

    /** No leaderboard depends on who is signed off, nor on the course of the lesson. */
    private static boolean movesLeaderboard(DayChange change) {
        return !(change instanceof SafetyChanged || change instanceof LessonChanged);
    }

    /** Last of all, since another change that grows the same share waits from here until this transaction ends. */
    private void count(UUID labDayId) {
        store.flush();
        revisions.grow(labDayId);
    }

    private void tell(UUID labDayId, boolean movesLeaderboard) {
        rooms.changed(labDayId);
        if (movesLeaderboard) {
            leaderboards.changed(labDayId);
        }
    }

    /** Registered twice it counts once: a transaction keeps a set of these. */
    private record AtCommit(DayChanges changes, UUID labDayId, boolean movesLeaderboard)
            implements TransactionSynchronization {

        @Override
        public void beforeCommit(boolean readOnly) {
            changes.count(labDayId);
        }

        @Override
        public void afterCommit() {
            changes.tell(labDayId, movesLeaderboard);
        }
    }
}
