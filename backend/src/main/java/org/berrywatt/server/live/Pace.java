package org.berrywatt.server.live;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * Runs a task soon after it is asked for: at once after a quiet time, else when the interval since the last run began is over
 * and it has rested for twice as long as that run took, so that a task which takes long leaves two thirds of a processor to
 * others. However often it is asked, the task runs at most once per interval, never beside itself, and always once after the
 * last asking.
 *
 * <p>Time is the machine's monotonic one, so that a corrected wall clock neither hurries nor stops the task.
 */
final class Pace {

    private static final int REST_PER_WORK = 2;

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
    private boolean running;
    private boolean askedMeanwhile;

    Pace(Later later, LongSupplier nanoTime, Duration interval, Runnable task) {
        this.later = later;
        this.nanoTime = nanoTime;
        this.intervalNanos = interval.toNanos();
        this.task = task;
        this.earliestNanos = nanoTime.getAsLong();
    }

    synchronized void ask() {
        if (running) {
            askedMeanwhile = true;
        } else if (!planned) {
            plan();
        }
    }

    private void plan() {
        planned = true;
        later.run(this::run, Math.max(0, earliestNanos - nanoTime.getAsLong()), TimeUnit.NANOSECONDS);
    }

    private void run() {
        long begunNanos = begin();
        try {
            task.run();
        } finally {
            rest(begunNanos);
        }
    }

    private synchronized long begin() {
        planned = false;
        running = true;
        return nanoTime.getAsLong();
    }

    private synchronized void rest(long begunNanos) {
        long workNanos = nanoTime.getAsLong() - begunNanos;
        earliestNanos = begunNanos + Math.max(intervalNanos, workNanos + REST_PER_WORK * workNanos);
        running = false;
        if (askedMeanwhile) {
            askedMeanwhile = false;
            plan();
        }
    }
}
