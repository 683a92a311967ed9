package org.berrywatt.server.live;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * Runs a task soon after it is asked for: at once after a quiet time, else when the interval since the last run is over.
 * However often it is asked, the task runs at most once per interval, and always once after the last asking.
 *
 * <p>Time is the machine's monotonic one, so that a corrected wall clock neither hurries nor stops the task.
 */
final class Pace {

    /** Runs a task later. */
    interface Later {
        void run(Runnable task, long delay, TimeUnit unit);
    }

    private final Later later;
    private final LongSupplier nanoTime;
    private final long intervalNanos;
    private final Runnable task;
    private long earliestNanos;
    private boolean planned;

    Pace(Later later, LongSupplier nanoTime, Duration interval, Runnable task) {
        this.later = later;
        this.nanoTime = nanoTime;
        this.intervalNanos = interval.toNanos();
        this.task = task;
        this.earliestNanos = nanoTime.getAsLong();
    }

    synchronized void ask() {
        if (!planned) {
            planned = true;
            later.run(this::run, Math.max(0, earliestNanos - nanoTime.getAsLong()), TimeUnit.NANOSECONDS);
        }
    }

    private void run() {
        startInterval();
        task.run();
    }

    private synchronized void startInterval() {
        planned = false;
        earliestNanos = nanoTime.getAsLong() + intervalNanos;
    }
}
