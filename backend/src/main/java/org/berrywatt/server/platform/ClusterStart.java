package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.SQLException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Keeps a home's database running; whoever needs it first waits until it is up. */
final class ClusterStart implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(ClusterStart.class);
    private static final long PAUSE_S = 2;
    private final Home home;
    private final CountDownLatch closing = new CountDownLatch(1);
    private CompletableFuture<Cluster> cluster;

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
            throw DiskTrouble.writing(home.folder(), cause);
        }
    }

    private Cluster start(int port) {
        var hadData = Files.exists(home.database());
        var log = DatabaseLog.fromNow(home.databaseLog());
        try {
            var up = Cluster.start(home, port, log);
            up.whenEnded(() -> revive(up));
            return up;
        } catch (IOException | SQLException | RuntimeException cause) {
            throw DiskTrouble.starting(home.folder(), log, hadData, cause);
        }
    }

    /** A database that ended under a running server comes back under the same port; the connection pool finds it there. */
    private void revive(Cluster ended) {
        var revived = new CompletableFuture<Cluster>();
        if (!isNext(revived)) {
            return;
        }
        LOG.warn("The database ended unexpectedly; starting it again");
        closeQuietly(ended);
        try {
            revived.complete(startAtLast(ended.port()));
        } catch (StartProblem closingFirst) {
            revived.completeExceptionally(closingFirst);
        }
    }

    private synchronized boolean isNext(CompletableFuture<Cluster> revived) {
        if (closing.getCount() == 0) {
            return false;
        }
        cluster = revived;
        return true;
    }

    /** What keeps it from starting, a full disk perhaps, somebody may mend while the server waits. */
    private Cluster startAtLast(int port) {
        while (true) {
            try {
                return start(port);
            } catch (StartProblem problem) {
                LOG.warn("{} The server tries again every {} s.", problem.sentence(Texts.load()), PAUSE_S);
                if (isClosingWithin(PAUSE_S)) {
                    throw problem;
                }
            }
        }
    }

    private boolean isClosingWithin(long seconds) {
        try {
            return closing.await(seconds, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return true;
        }
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
        closing.countDown();
        return cluster;
    }
}
