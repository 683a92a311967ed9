package org.berrywatt.server.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Waits for a database as long as it is starting, and no longer. The library goes on asking for a minute when the program ended
 * at once, and stops only when it is interrupted.
 */
final class PatientStart {

    private static final long LOOK_EVERY_MS = 100;

    private PatientStart() {}

    /**
     * Starts a database.
     *
     * @param log what its programs write from now on
     * @throws IOException when it does not come up
     */
    static EmbeddedPostgres of(EmbeddedPostgres.Builder builder, DatabaseLog log) throws IOException {
        var start = new FutureTask<>(builder::start);
        var hand = new Thread(start, "database-start");
        hand.setDaemon(true);
        hand.start();
        var postgres = result(start, hand, log);
        if (log.saysThatItGaveUp()) {
            postgres.close();
            throw new IOException("the database ended while it started");
        }
        return postgres;
    }

    private static EmbeddedPostgres result(FutureTask<EmbeddedPostgres> start, Thread hand, DatabaseLog log)
            throws IOException {
        while (true) {
            try {
                return start.get(LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                if (log.saysThatItGaveUp()) {
                    hand.interrupt();
                }
            } catch (ExecutionException failed) {
                Throwable cause = Objects.requireNonNullElse(failed.getCause(), failed);
                throw new IOException(cause.getMessage(), cause);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw new IOException("interrupted while the database started", interrupted);
            }
        }
    }
}
