package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.util.Map;

/** Writes a home's database and its password to a file; the server may be at work meanwhile. */
final class Backup {

    private Backup() {}

    /**
     * All or nothing: a file of this name appears when it is complete.
     *
     * @return its size in bytes
     * @throws StartProblem when the file is there already, the home has no data, or either cannot be read or written
     */
    static long of(Path home, Path file) {
        if (Files.exists(file)) {
            throw new StartProblem("backupExists", Map.of("file", file));
        }
        var folder = file.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new StartProblem("backupNoFolder", Map.of("file", file));
        }
        if (!Files.exists(Home.database(home).resolve("PG_VERSION"))) {
            throw new StartProblem("backupNothing", Map.of("home", home));
        }
        try {
            return complete(home, file);
        } catch (IOException | SQLException cause) {
            throw new StartProblem(
                    "backupFailed", Map.of("file", file, "reason", String.valueOf(cause.getMessage())), cause);
        }
    }

    private static long complete(Path home, Path file) throws IOException, SQLException {
        var draft = file.resolveSibling(file.getFileName() + ".new");
        try {
            write(home, draft);
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
            return Files.size(file);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static void write(Path home, Path draft) throws IOException, SQLException {
        try (var into = BackupWriter.create(draft)) {
            into.file(Home.PASSWORD, Home.password(home));
            var running = RunningDatabase.of(home);
            if (running.isPresent()) {
                running.get().copy(into);
            } else {
                atRest(home, into);
            }
            into.seal();
        }
    }

    /** The lock keeps a server from starting in between. */
    private static void atRest(Path place, BackupWriter into) throws IOException {
        try (var home = Home.open(place, null)) {
            into.tree(home.database(), path -> !DatabaseFiles.OF_A_PROCESS.contains(path));
        }
    }
}
