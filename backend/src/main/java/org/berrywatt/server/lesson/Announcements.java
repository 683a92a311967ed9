package org.berrywatt.server.lesson;

import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementAnswer;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the teacher tells the class, also while the day is closed for entries. */
@Service
class Announcements {

    private static final int LONGEST = 200;
    private static final int LONGEST_MINUTES = 480;
    private static final long MOST = 300;

    private final LabDays days;
    private final AnnouncementRepository announcements;
    private final Receipts receipts;
    private final EntityManager store;
    private final ApplicationEventPublisher events;

    Announcements(
            LabDays days,
            AnnouncementRepository announcements,
            Receipts receipts,
            EntityManager store,
            ApplicationEventPublisher events) {
        this.days = days;
        this.announcements = announcements;
        this.receipts = receipts;
        this.store = store;
        this.events = events;
    }

    /**
     * Makes an announcement; the one before it no longer stands.
     *
     * @throws Refusal {@code lesson.full}, or when the words or minutes are refused
     */
    @Transactional
    public AnnouncementAnswer put(UUID id, AnnouncementRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(id, request, () -> make(id, request, caller, at), () -> find(id).answer());
    }

    /** Takes it back; once more changes nothing. */
    @Transactional
    public AnnouncementAnswer takeBack(UUID id, Caller caller, Instant at) {
        caller.requireTeacher();
        var announcement = find(id);
        if (announcement.takeBack(at)) {
            events.publishEvent(new LessonChanged(announcement.labDayId()));
        }
        return announcement.answer();
    }

    private AnnouncementAnswer make(UUID id, AnnouncementRequest request, Caller caller, Instant at) {
        var day = days.holdAlone(Given.need("labDayId", request.labDayId()));
        int earlier = announcements.countByLabDayId(day.id());
        Bounds.require(earlier, MOST);
        var announcement = new AnnouncementEntity(
                id,
                day.id(),
                earlier + 1,
                Words.line("words", request.words(), LONGEST),
                end(request.minutes(), at),
                caller.signature(),
                at);
        store.persist(announcement);
        events.publishEvent(new LessonChanged(day.id()));
        return announcement.answer();
    }

    private static @Nullable Instant end(@Nullable Integer minutes, Instant at) {
        return minutes == null
                ? null
                : at.plus(Duration.ofMinutes(Given.between("minutes", minutes, 1, LONGEST_MINUTES)));
    }

    private AnnouncementEntity find(UUID id) {
        return announcements.findById(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }
}
