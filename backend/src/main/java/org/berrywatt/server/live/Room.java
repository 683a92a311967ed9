package org.berrywatt.server.live;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementAnswer;
import org.berrywatt.contract.RoomState;
import org.berrywatt.contract.TimerAnswer;
import org.jspecify.annotations.Nullable;

/** What everybody in the room may know, but for the time: two looks at an unchanged day are equal. */
record Room(
        UUID labDayId,
        long revision,
        boolean entryOpen,
        @Nullable AnnouncementAnswer announcement,
        List<TimerAnswer> timers) {

    /** The same as it leaves the server at a time. */
    RoomState at(Instant serverTime) {
        return new RoomState(labDayId, serverTime, revision, entryOpen, announcement, timers);
    }
}
