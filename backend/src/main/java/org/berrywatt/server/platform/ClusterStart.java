package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;

/** A database on its way up, beside the rest of the server; whoever needs it first waits for it. */
final class ClusterStart implements AutoCloseable {

    private final Home home;
    private final CompletableFuture<Cluster> cluster;

    private ClusterStart(Home home, CompletableFuture<Cluster> cluster) {
        this.home = home;
        this.cluster = cluster;
    }

    /**
     * Opens the home at once and starts its database in the background.
     *
     * @throws StartProblem when the home cannot be used
     */
    static ClusterStart in(Path place, @Nullable Path programs) {
        var home = Home.open(place);
        try {
            home.requireDatabaseVersion(Cluster.MAJOR);
        } catch (IOException cause) {
            throw new StartProblem("homeUnwritable", Map.of("home", place), cause);
        }
        return new ClusterStart(home, CompletableFuture.supplyAsync(() -> start(home, programs)));
    }

    private static Cluster start(Home home, @Nullable Path programs) {
        try {
            return Cluster.start(home, programs);
        } catch (IOException | SQLException | IllegalStateException cause) {
            throw new StartProblem("databaseFailed", Map.of("home", home.database()), cause);
        }
    }

    /** @throws StartProblem when the database did not come up */
    Cluster await() {
        try {
            return cluster.join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof StartProblem problem ? problem : failed;
        }
    }

    /** Ends the database and gives the home free; may be called again. */
    @Override
    public void close() throws IOException {
        var started = cluster.handle((up, failed) -> up).join();
        if (started != null) {
            started.close();
        }
        home.close();
    }
}
