package org.berrywatt.server.live;

import org.berrywatt.server.cell.CellChanged;
import org.berrywatt.server.labday.LabDayChanged;
import org.berrywatt.server.light.LightChanged;
import org.berrywatt.server.reading.ReadingAccepted;
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

    private final Feeds feeds;

    DayChanges(Feeds feeds) {
        this.feeds = feeds;
    }

    @ApplicationModuleListener
    void on(LabDayChanged change) {
        feeds.changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(TeamChanged change) {
        feeds.changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(CellChanged change) {
        feeds.changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(LightChanged change) {
        feeds.changed(change.labDayId());
    }

    @ApplicationModuleListener
    void on(ReadingAccepted change) {
        feeds.changed(change.labDayId());
    }
}
