package org.berrywatt.server.findings;

import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.FindingsRunAnswer;
import org.berrywatt.findings.StudyFindings;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.statistics.Resampling;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A long look at many cells, beside everything else that the server does: first without draws, so that there is something to
 * read soon, then with all of them. Every thousandth draw and every parameter asks whether anybody still wants it.
 */
final class Run implements Runnable {

    private static final Logger LOG = LoggerFactory.getLogger(Run.class);

    private final UUID id;
    private final AtomicInteger steps = new AtomicInteger();
    private final AtomicLong draws = new AtomicLong();
    private volatile @Nullable Supplier<FindingsAnswers> question;
    private volatile @Nullable FindingsAnswer answer;
    private volatile @Nullable String problem;
    private volatile State state = State.WAITING;
    private volatile boolean unwanted;
    private volatile int of;

    private enum State {
        WAITING("waiting"),
        RUNNING("running"),
        DONE("done"),
        ENDED("ended"),
        FAILED("failed");

        private final String key;

        State(String key) {
            this.key = key;
        }
    }

    /** @param question is asked when its turn has come */
    Run(UUID id, Supplier<FindingsAnswers> question) {
        this.id = id;
        this.question = question;
    }

    UUID id() {
        return id;
    }

    @Override
    public void run() {
        var asked = question;
        if (asked == null || unwanted) {
            end(State.ENDED);
            return;
        }
        state = State.RUNNING;
        try {
            look(asked.get());
            end(State.DONE);
        } catch (CancellationException e) {
            end(State.ENDED);
        } catch (Refusal e) {
            problem = e.code().code();
            end(State.FAILED);
        } catch (RuntimeException e) {
            LOG.error("a look at many cells failed", e);
            end(State.FAILED);
        }
    }

    private void look(FindingsAnswers asked) {
        var looked = asked.all().filtered(asked.filter());
        var study = looked.study();
        of = 2 * looked.columns().size();
        answer = asked.of(looked, StudyFindings.of(study, Resampling.none(), this::step));
        var all = Resampling.seeded(Findings.SEED);
        answer = asked.of(
                looked, StudyFindings.of(study, new Resampling(all.draws(), all.seed(), this::drawn), this::step));
    }

    private void step() {
        requireWanted();
        steps.incrementAndGet();
    }

    private void drawn(long count) {
        requireWanted();
        draws.addAndGet(count);
    }

    private void requireWanted() {
        if (unwanted) {
            throw new CancellationException();
        }
    }

    /** A hundred thousand cells need not be kept for an answer that is there. */
    private void end(State how) {
        question = null;
        state = how;
    }

    /** What is there by now stays. */
    void end() {
        unwanted = true;
    }

    @Nullable
    FindingsAnswer answer() {
        return answer;
    }

    FindingsRunAnswer progress() {
        var now = state;
        var said = answer == null ? "none" : now == State.DONE ? "full" : "rough";
        return new FindingsRunAnswer(id, now.key, steps.get(), of, draws.get(), said, problem);
    }
}
