package org.berrywatt.server.findings;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.berrywatt.contract.FindingsAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;

/** Long looks at many cells, one after another on one thread of their own, so that phones keep the others. */
@Component
class Runs implements DisposableBean {

    private static final int WAITING = 4;
    private static final int REMEMBERED = 20;

    private final ThreadPoolExecutor worker =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), Runs::thread);
    private final Cache<UUID, Run> runs = Caffeine.newBuilder()
            .maximumSize(REMEMBERED)
            .expireAfterAccess(Duration.ofMinutes(30))
            .build();

    private static Thread thread(Runnable work) {
        var thread = new Thread(work, "findings");
        thread.setDaemon(true);
        return thread;
    }

    /** @throws Refusal {@code findings.busy} while several others wait */
    Run start(Supplier<FindingsAnswers> question) {
        var run = new Run(UUID.randomUUID(), question);
        try {
            worker.execute(run);
        } catch (RejectedExecutionException e) {
            throw Refusal.of(ProblemCode.FINDINGS_BUSY).value(WAITING + 1);
        }
        runs.put(run.id(), run);
        return run;
    }

    /** @throws Refusal {@code findings.gone} for one that is not remembered */
    Run find(UUID id) {
        return Optional.ofNullable(runs.getIfPresent(id)).orElseThrow(() -> Refusal.of(ProblemCode.FINDINGS_GONE));
    }

    /** @throws Refusal {@code findings.gone} for one that is not remembered, or has nothing to say yet */
    FindingsAnswer answer(UUID id) {
        return Optional.ofNullable(find(id).answer()).orElseThrow(() -> Refusal.of(ProblemCode.FINDINGS_GONE));
    }

    @Override
    public void destroy() {
        runs.asMap().values().forEach(Run::end);
        worker.shutdownNow();
    }
}
