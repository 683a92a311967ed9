package org.berrywatt.server.lesson;

import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TimerExtensionRequest;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.team.Team;
import org.berrywatt.server.team.Teams;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Starts, extends and stops timers. */
@Component
class TimerWriting {

    private static final int LONGEST_WORDS = 60;
    private static final int LONGEST_S = 8 * 60 * 60;
    private static final int LONGEST_EXTENSION_MINUTES = 60;
    private static final long MOST = 300;

    private final LabDays days;
    private final Teams teams;
    private final Cells cells;
    private final TimerRepository timers;
    private final EntityManager store;
    private final JdbcClient database;
    private final ApplicationEventPublisher events;

    TimerWriting(
            LabDays days,
            Teams teams,
            Cells cells,
            TimerRepository timers,
            EntityManager store,
            JdbcClient database,
            ApplicationEventPublisher events) {
        this.days = days;
        this.teams = teams;
        this.cells = cells;
        this.timers = timers;
        this.store = store;
        this.database = database;
        this.events = events;
    }

    TimerEntity start(UUID id, TimerRequest request, Caller caller, Instant at) {
        var day = days.holdAlone(Given.need("labDayId", request.labDayId()));
        Bounds.require(timers.countByLabDayId(day.id()), MOST);
        var length = Duration.ofSeconds(Given.between("durationS", request.durationS(), 1, LONGEST_S));
        var timer = new TimerEntity(id, day.id(), scope(request, day.id()), caller.signature(), at, at.plus(length));
        store.persist(timer);
        return changed(timer);
    }

    TimerEntity extend(TimerEntity timer, UUID extensionId, TimerExtensionRequest request, Caller caller, Instant at) {
        if (timer.isStopped()) {
            throw Refusal.of(ProblemCode.REPLACED_ALREADY);
        }
        var minutes = Given.between("minutes", request.minutes(), 1, LONGEST_EXTENSION_MINUTES);
        var from = timer.endsAt().isAfter(at) ? timer.endsAt() : at;
        timer.endAt(earlier(from.plus(Duration.ofMinutes(minutes)), at.plusSeconds(LONGEST_S)));
        keep(timer, extensionId, caller, at);
        return changed(timer);
    }

    TimerEntity stop(TimerEntity timer, Instant at) {
        if (timer.isStopped()) {
            return timer;
        }
        timer.stop(at);
        return changed(timer);
    }

    private TimerScope scope(TimerRequest request, UUID labDayId) {
        var words = Words.line("words", request.words(), LONGEST_WORDS);
        if (request.cellId() == null) {
            return new TimerScope(words, teamOf(request.teamId(), labDayId), null);
        }
        var cell = cells.find(request.cellId())
                .filter(found -> found.labDayId().equals(labDayId))
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("cellId"));
        return new TimerScope(words, cell.teamId(), cell.id());
    }

    private @Nullable UUID teamOf(@Nullable UUID teamId, UUID labDayId) {
        return teamId == null
                ? null
                : teams.remaining(teamId)
                        .filter(found -> found.labDayId().equals(labDayId))
                        .map(Team::id)
                        .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("teamId"));
    }

    private void keep(TimerEntity timer, UUID extensionId, Caller caller, Instant at) {
        database.sql("insert into class_timer_extension (id, timer_id, ends_at, written_by, written_at)"
                        + " values (?, ?, ?, ?, ?)")
                .params(
                        extensionId,
                        timer.id(),
                        timer.endsAt().atOffset(ZoneOffset.UTC),
                        caller.signature(),
                        at.atOffset(ZoneOffset.UTC))
                .update();
    }

    private TimerEntity changed(TimerEntity timer) {
        events.publishEvent(new LessonChanged(timer.labDayId()));
        return timer;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
