package org.berrywatt.server.lesson;

import java.time.Instant;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TimerAnswer;
import org.berrywatt.contract.TimerExtensionRequest;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Timers of a lesson, kept as the times of their ends, so that they outlive a reload and a restart. */
@Service
class Timers {

    private final TimerRepository timers;
    private final TimerWriting writing;
    private final Receipts receipts;

    Timers(TimerRepository timers, TimerWriting writing, Receipts receipts) {
        this.timers = timers;
        this.writing = writing;
        this.receipts = receipts;
    }

    /**
     * Starts a timer.
     *
     * @throws Refusal {@code lesson.full}, {@code notFound} for a team or cell of another day, or when a field is refused
     */
    @Transactional
    public TimerAnswer put(UUID id, TimerRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                id, request, () -> writing.start(id, request, caller, at).answer(), () -> find(id).answer());
    }

    /**
     * Gives a timer more time, from its end or, when that is past, from now.
     *
     * @throws Refusal when it is stopped ({@code replaced.already}) or the minutes are refused
     */
    @Transactional
    public TimerAnswer extend(UUID id, UUID extensionId, TimerExtensionRequest request, Caller caller, Instant at) {
        caller.requireTeacher();
        return receipts.once(
                extensionId,
                new ExtensionOfTimer(id, request),
                () -> writing.extend(find(id), extensionId, request, caller, at).answer(),
                () -> find(id).answer());
    }

    /** Stops a timer; once more changes nothing. */
    @Transactional
    public TimerAnswer stop(UUID id, Caller caller, Instant at) {
        caller.requireTeacher();
        return writing.stop(find(id), at).answer();
    }

    private TimerEntity find(UUID id) {
        return timers.holdAlone(id).orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND));
    }

    /** An extension's whole request: the timer stands in the address. */
    private record ExtensionOfTimer(UUID timerId, TimerExtensionRequest extension) {}
}
