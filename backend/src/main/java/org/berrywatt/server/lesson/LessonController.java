package org.berrywatt.server.lesson;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.AnnouncementAnswer;
import org.berrywatt.contract.AnnouncementRequest;
import org.berrywatt.contract.LessonAnswer;
import org.berrywatt.contract.PhoneAnswer;
import org.berrywatt.contract.PhoneRequest;
import org.berrywatt.server.access.Caller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Announcements, presence and how the lesson stands, over HTTP. */
@RestController
@RequestMapping("/api")
class LessonController {

    private final Lesson lesson;
    private final Announcements announcements;
    private final Phones phones;
    private final Clock clock;

    LessonController(Lesson lesson, Announcements announcements, Phones phones, Clock clock) {
        this.lesson = lesson;
        this.announcements = announcements;
        this.phones = phones;
        this.clock = clock;
    }

    @GetMapping("/labdays/{labDayId}/lesson")
    LessonAnswer show(@PathVariable UUID labDayId, Caller caller) {
        return lesson.show(labDayId, caller, clock.instant());
    }

    @PutMapping("/announcements/{id}")
    AnnouncementAnswer announce(@PathVariable UUID id, @RequestBody AnnouncementRequest request, Caller caller) {
        return announcements.put(id, request, caller, clock.instant());
    }

    @PutMapping("/announcements/{id}/end")
    AnnouncementAnswer takeBack(@PathVariable UUID id, Caller caller) {
        return announcements.takeBack(id, caller, clock.instant());
    }

    @PutMapping("/phones/{id}")
    PhoneAnswer note(@PathVariable UUID id, @RequestBody PhoneRequest request, Caller caller) {
        return phones.put(id, request, caller, clock.instant());
    }

    @GetMapping("/labdays/{labDayId}/phones")
    List<PhoneAnswer> phones(@PathVariable UUID labDayId, Caller caller) {
        return phones.list(labDayId, caller);
    }
}
