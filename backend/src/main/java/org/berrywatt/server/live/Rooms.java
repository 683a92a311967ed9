package org.berrywatt.server.live;

import java.time.Clock;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.lesson.Lesson;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Component;

/** Gathers what everybody in the room may know: three small queries. */
@Component
class Rooms {

    private final LabDays days;
    private final Lesson lesson;
    private final Revisions revisions;
    private final Clock clock;

    Rooms(LabDays days, Lesson lesson, Revisions revisions, Clock clock) {
        this.days = days;
        this.lesson = lesson;
        this.revisions = revisions;
        this.clock = clock;
    }

    /** @throws Refusal {@code notFound} when the day is gone */
    Room of(UUID labDayId) {
        long revision = revisions.of(labDayId); // first, so that what is read is never older than its number says
        LabDay day = days.find(labDayId).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
        Instant now = clock.instant();
        return new Room(
                labDayId,
                revision,
                day.entryOpen(),
                lesson.announcement(labDayId, now).orElse(null),
                lesson.classTimers(labDayId, now));
    }
}
