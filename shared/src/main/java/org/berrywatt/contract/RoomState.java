package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What everybody in the room may know at once. Public as the Wall is.
 *
 * @param serverTime when this left the server; tells a page how far its own clock is off
 * @param revision grows whenever anything of the day changed, also over a restart: a page that shows more than this reads
 *     it again
 * @param announcement the latest one that stands
 * @param timers those of the whole class that run or were over not long ago, in the order of their ends
 */
public record RoomState(
        UUID labDayId,
        Instant serverTime,
        long revision,
        boolean entryOpen,
        @Nullable AnnouncementAnswer announcement,
        List<TimerAnswer> timers) {}
