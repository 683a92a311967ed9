package org.berrywatt.server.live;

import java.util.UUID;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.server.cell.CellChanged;
import org.berrywatt.server.labday.LabDayChanged;
import org.berrywatt.server.lesson.LessonChanged;
import org.berrywatt.server.light.ControlCellChosen;
import org.berrywatt.server.light.LightChanged;
import org.berrywatt.server.reading.ReadingAccepted;
import org.berrywatt.server.reading.ReadingSetAside;
import org.berrywatt.server.safety.SafetyChanged;
import org.berrywatt.server.team.TeamChanged;
import org.springframework.modulith.events.ApplicationModuleListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;

/**
 * Hears what the features announce after their commit. An announcement stays in the event log until it was heard here, so
 * one that a crash cut off is heard later, at the next start or by another server. From here on the day's revision tells that
 * somebody must look: the state is computed from what is recorded. No transaction of its own, so that the revision has grown
 * before anybody looks.
 */
@Component
class DayChanges {

    private final Revisions revisions;
    private final Feeds<Room> rooms;
    private final Feeds<LeaderboardState> leaderboards;

    DayChanges(Revisions revisions, Feeds<Room> rooms, Feeds<LeaderboardState> leaderboards) {
        this.revisions = revisions;
        this.rooms = rooms;
        this.leaderboards = leaderboards;
    }

    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(LabDayChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(TeamChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(CellChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(LightChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(ControlCellChosen change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(ReadingAccepted change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(ReadingSetAside change) {
        changed(change.labDayId());
    }

    /** No leaderboard depends on who is signed off. */
    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(SafetyChanged change) {
        tellTheRoom(change.labDayId());
    }

    /** No leaderboard depends on the course of the lesson. */
    @ApplicationModuleListener(propagation = Propagation.NOT_SUPPORTED)
    void on(LessonChanged change) {
        tellTheRoom(change.labDayId());
    }

    private void changed(UUID labDayId) {
        tellTheRoom(labDayId);
        leaderboards.changed(labDayId);
    }

    private void tellTheRoom(UUID labDayId) {
        revisions.grow(labDayId);
        rooms.changed(labDayId);
    }
}
