package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class PaceTest {

    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private final Queue<Duration> delays = new ArrayDeque<>();
    private long nanoTime = 7;
    private int runs;
    private final Pace pace = new Pace(this::later, () -> nanoTime, Duration.ofMillis(500), () -> runs++);

    @Test
    void runsAtOnceAfterAQuietTime() {
        pace.ask();

        assertThat(delays).containsExactly(Duration.ZERO);
    }

    @Test
    void waitsForTheEndOfTheInterval() {
        pace.ask();
        runNext();
        pass(Duration.ofMillis(120));

        pace.ask();

        assertThat(delays).containsExactly(Duration.ZERO, Duration.ofMillis(380));
    }

    @Test
    void runsOnceForManyAskings() {
        pace.ask();
        pace.ask();
        pace.ask();
        runNext();

        assertThat(runs).isEqualTo(1);
        assertThat(waiting).isEmpty();
    }

    @Test
    void runsAgainForAnAskingDuringTheRun() {
        Pace[] busy = new Pace[1];
        busy[0] = new Pace(this::later, () -> nanoTime, Duration.ofMillis(500), () -> {
            runs++;
            busy[0].ask();
        });
        busy[0].ask();

        runNext();

        assertThat(delays).containsExactly(Duration.ZERO, Duration.ofMillis(500));
    }

    @Test
    void restsTwiceAsLongAsALongRunTook() {
        var work = Duration.ofMillis(300);
        var slow = new Pace(this::later, () -> nanoTime, Duration.ofMillis(500), () -> pass(work));
        slow.ask();
        runNext();

        slow.ask();

        assertThat(delays).containsExactly(Duration.ZERO, work.multipliedBy(2));
    }

    @Test
    void runsAgainAfterARunThatFailed() {
        var failing = new Pace(this::later, () -> nanoTime, Duration.ofMillis(500), () -> {
            throw new IllegalStateException("no");
        });
        failing.ask();
        assertThatThrownBy(this::runNext).isInstanceOf(IllegalStateException.class);

        failing.ask();

        assertThat(delays).containsExactly(Duration.ZERO, Duration.ofMillis(500));
    }

    private void later(Runnable task, long delay, TimeUnit unit) {
        waiting.add(task);
        delays.add(Duration.of(delay, unit.toChronoUnit()));
    }

    private void runNext() {
        waiting.remove().run();
    }

    private void pass(Duration time) {
        nanoTime += time.toNanos();
    }
}
