package org.berrywatt.server.platform;

import java.io.IOException;
import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Keeps a home's database running; whoever needs it first waits until it is up. */
final class ClusterStart implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(ClusterStart.class);
    private final Home home;
    private CompletableFuture<Cluster> cluster;
    private boolean closing;

    private ClusterStart(Home home) {
        this.home = home;
        this.cluster = CompletableFuture.supplyAsync(() -> start(Cluster.ANY_PORT));
    }

    /**
     * Looks at the data at once and starts their database in the background.
     *
     * @throws StartProblem when another version of PostgreSQL wrote the data
     */
    static ClusterStart in(Home home) {
        try {
            home.requireDatabaseVersion(Cluster.MAJOR);
            return new ClusterStart(home);
        } catch (IOException cause) {
            throw new StartProblem("homeUnwritable", Map.of("home", home), cause);
        }
    }

    private Cluster start(int port) {
        try {
            var up = Cluster.start(home, port);
            up.whenEnded(() -> revive(up));
            return up;
        } catch (IOException | SQLException | RuntimeException cause) {
            throw new StartProblem("databaseFailed", Map.of("home", home, "log", home.databaseLog()), cause);
        }
    }

    /** A database killed under a running server comes back under the same port; the connection pool finds it there. */
    private synchronized void revive(Cluster ended) {
        if (closing) {
            return;
        }
        LOG.warn("The database ended unexpectedly; starting it again");
        cluster = CompletableFuture.supplyAsync(() -> {
            closeQuietly(ended);
            return start(ended.port());
        });
    }

    private static void closeQuietly(Cluster ended) {
        try {
            ended.close();
        } catch (IOException cause) {
            LOG.warn("Could not tidy up after the database: {}", cause.getMessage());
        }
    }

    /** @throws StartProblem when the database did not come up */
    Cluster await() {
        try {
            return current().join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof StartProblem problem ? problem : failed;
        }
    }

    private synchronized CompletableFuture<Cluster> current() {
        return cluster;
    }

    /** Ends the database and gives the home free; may be called again. */
    @Override
    public void close() throws IOException {
        var last = stopReviving().handle((up, failed) -> up).join();
        if (last != null) {
            last.close();
        }
        home.close();
    }

    private synchronized CompletableFuture<Cluster> stopReviving() {
        closing = true;
        return cluster;
    }
}
