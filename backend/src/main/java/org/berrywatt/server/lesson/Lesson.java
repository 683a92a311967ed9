package org.berrywatt.server.lesson;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementAnswer;
import org.berrywatt.contract.LessonAnswer;
import org.berrywatt.contract.TimerAnswer;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The course of a day's lesson, for later features and for whoever asks. */
@Service
public class Lesson {

    /** A timer that is over is shown a little longer, so that nobody misses its end. Common practice, no source. */
    private static final Duration OVER_FOR = Duration.ofMinutes(10);

    private final Cells cells;
    private final AnnouncementRepository announcements;
    private final TimerRepository timers;
    private final HeaterSlots heaters;
    private final HeaterSlotRepository slots;
    private final PhoneTable phones;

    Lesson(
            Cells cells,
            AnnouncementRepository announcements,
            TimerRepository timers,
            HeaterSlots heaters,
            HeaterSlotRepository slots,
            PhoneTable phones) {
        this.cells = cells;
        this.announcements = announcements;
        this.timers = timers;
        this.heaters = heaters;
        this.slots = slots;
        this.phones = phones;
    }

    /** Timers and heaters, for teachers and the teams of the day: a team sees the class's timers and its own. */
    @Transactional(readOnly = true)
    public LessonAnswer show(UUID labDayId, Caller caller, Instant now) {
        caller.requireLabDay(labDayId);
        var shown = standing(labDayId, now).stream()
                .filter(timer -> timer.teamId() == null || caller.speaksFor(timer.teamId()))
                .map(TimerEntity::answer)
                .toList();
        var stays = heaters.list(labDayId, cells.ofLabDay(labDayId));
        return new LessonAnswer(now, shown, stays, (int) HeaterSlot.COOL_DOWN.toMinutes());
    }

    /** The latest announcement, while it stands. */
    @Transactional(readOnly = true)
    public Optional<AnnouncementAnswer> announcement(UUID labDayId, Instant now) {
        return announcements
                .findFirstByLabDayIdOrderByPositionDesc(labDayId)
                .filter(latest -> latest.standsAt(now))
                .map(AnnouncementEntity::answer);
    }

    /** The whole class's timers that run or were over not long ago, in the order of their ends. */
    @Transactional(readOnly = true)
    public List<TimerAnswer> classTimers(UUID labDayId, Instant now) {
        return standing(labDayId, now).stream()
                .filter(timer -> timer.teamId() == null)
                .map(TimerEntity::answer)
                .toList();
    }

    /** Every stay on a heater that no correction replaces, in the order put in. */
    @Transactional(readOnly = true)
    public List<HeaterSlot> slots(UUID labDayId) {
        return slots.standing(labDayId).stream().map(HeaterSlotEntity::view).toList();
    }

    /** The phones of a day as they were last heard of, by team. */
    @Transactional(readOnly = true)
    public List<Phone> phones(UUID labDayId) {
        return phones.ofLabDay(labDayId);
    }

    private List<TimerEntity> standing(UUID labDayId, Instant now) {
        return timers.standing(labDayId, now.minus(OVER_FOR));
    }
}
