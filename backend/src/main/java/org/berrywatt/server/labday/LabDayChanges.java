package org.berrywatt.server.labday;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.EntryRequest;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.RetentionRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a teacher changes of a day: its settings, whether it is open, whether its results are final, and how long it is kept. */
@Service
public class LabDayChanges {

    private static final int LONGEST_REASON = 120;

    private final LabDayRepository days;
    private final LabDayHistory history;

    LabDayChanges(LabDayRepository days, LabDayHistory history) {
        this.days = days;
        this.history = history;
    }

    /**
     * Edits a day. An edit that changes nothing is answered as done, so that it may be sent twice.
     *
     * @param version the version that the editor saw
     * @throws Refusal {@code edited.meanwhile} when the day has another version by now, {@code labday.final}
     */
    @Transactional
    public LabDayAnswer edit(UUID id, LabDayRequest request, long version, Caller caller, Instant at) {
        caller.requireTeacher();
        var settings = LabDayConverter.settings(request);
        var day = held(id);
        if (!settings.equals(day.settings())) {
            requireVersion(day, version);
            day.view().requireChangeable();
            day.change(settings);
            history.record(day, null, caller, at);
        }
        return LabDayConverter.answer(day, true);
    }

    /**
     * Opens or closes a day for entries; entries on their way are finished first.
     *
     * @throws Refusal {@code labday.final} when its results are final, which must be taken back first
     */
    @Transactional
    public LabDayAnswer setEntry(UUID id, EntryRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var day = held(id);
        if (day.entryOpen() != request.open()) {
            day.view().requireChangeable();
            day.setEntryOpen(request.open());
            history.record(day, null, caller, at);
        }
        return LabDayConverter.answer(day, true);
    }

    /**
     * Makes the results of a day final, which closes it for entries and for corrections, or takes that back with a reason.
     *
     * @throws Refusal {@code value.missing} or another for the reason of taking it back
     */
    @Transactional
    public LabDayAnswer setFinal(UUID id, FinalRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var day = held(id);
        if (day.resultsFinal() != request.resultsFinal()) {
            var reason = request.resultsFinal() ? null : Words.line("reason", request.reason(), LONGEST_REASON);
            day.setResultsFinal(request.resultsFinal());
            history.record(day, reason, caller, at);
        }
        return LabDayConverter.answer(day, true);
    }

    /**
     * Says until when a day is to be kept, also once its results are final; nothing is deleted by itself.
     *
     * @throws Refusal {@code labday.keptTooShort} for a date before the day itself
     */
    @Transactional
    public LabDayAnswer keep(UUID id, RetentionRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        var day = held(id);
        if (!Objects.equals(request.keepUntil(), day.keepUntil())) {
            requireNotBefore(day.settings().heldOn(), request.keepUntil());
            day.keepUntil(request.keepUntil());
            history.record(day, null, caller, at);
        }
        return LabDayConverter.answer(day, true);
    }

    private LabDayEntity held(UUID id) {
        return days.holdAlone(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    private static void requireNotBefore(LocalDate heldOn, @Nullable LocalDate keepUntil) {
        if (keepUntil != null && Given.date("keepUntil", keepUntil).isBefore(heldOn)) {
            throw Refusal.of(ProblemCode.LABDAY_KEPT_TOO_SHORT)
                    .field("keepUntil")
                    .value(keepUntil)
                    .limit(heldOn);
        }
    }

    private static void requireVersion(LabDayEntity day, long version) {
        if (day.version() != version) {
            throw Refusal.of(ProblemCode.EDITED_MEANWHILE).value(version).limit(day.version());
        }
    }
}
