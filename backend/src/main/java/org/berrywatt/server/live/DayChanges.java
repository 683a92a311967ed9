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

/**
 * Hears what the features announce after their commit. An announcement stays in the event log until it was heard here, so
 * one that a crash cut off is heard at the next start. From here on nothing needs keeping: the state is computed from what
 * is recorded, and a server that starts anew begins a new epoch, which sends every page for a fresh snapshot.
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

    @ApplicationModuleListener
    void on(LabDayChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(TeamChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(CellChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(LightChanged change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(ControlCellChosen change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(ReadingAccepted change) {
        changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(ReadingSetAside change) {
        changed(change.labDayId());
    }

    /** No leaderboard depends on who is signed off. */
    @ApplicationModuleListener
    void on(SafetyChanged change) {
        tellTheRoom(change.labDayId());
    }

    /** No leaderboard depends on the course of the lesson. */
    @ApplicationModuleListener
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
