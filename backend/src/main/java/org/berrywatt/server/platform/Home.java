package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The folder that holds a server's data, locked against a second server as long as this one runs. */
final class Home implements AutoCloseable {

    /** The name of the file with the database's password. */
    static final String PASSWORD = "database.password";

    private final Path folder;
    private final Path programs;
    private final FileChannel lock;

    private Home(Path folder, Path programs, FileChannel lock) {
        this.folder = folder;
        this.programs = programs;
        this.lock = lock;
    }

    /**
     * Makes the folder where it is missing and takes its lock.
     *
     * @param programs where the database's programs are unpacked, when not in this folder
     * @throws StartProblem when the folder cannot be written or belongs to a running server
     */
    static Home open(Path place, @Nullable Path programs) {
        var folder = place.toAbsolutePath().normalize();
        try {
            var lock = FileChannel.open(
                    OwnerOnly.folder(folder).resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (tryLock(lock) == null) {
                lock.close();
                throw new StartProblem("homeLocked", Map.of("home", folder));
            }
            var unpacked = programs == null ? folder.resolve("programs") : programs.toAbsolutePath();
            return new Home(folder, unpacked, lock);
        } catch (IOException cause) {
            throw DiskTrouble.writing(folder, cause);
        }
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException lockedByThisProcess) {
            return null;
        }
    }

    Path folder() {
        return folder;
    }

    Path database() {
        return database(folder);
    }

    static Path database(Path folder) {
        return folder.resolve("database");
    }

    static Path password(Path folder) {
        return folder.resolve(PASSWORD);
    }

    Path programs() {
        return programs;
    }

    /** What the database's programs say of themselves. */
    Path databaseLog() {
        return folder.resolve("database.log");
    }

    Path password() {
        return password(folder);
    }

    /**
     * Looks at data that are already there.
     *
     * @throws StartProblem when another major version of PostgreSQL wrote them
     */
    void requireDatabaseVersion(String major) throws IOException {
        var file = database().resolve("PG_VERSION");
        if (!Files.exists(file)) {
            return;
        }
        var found = Files.readString(file).strip();
        if (!found.equals(major)) {
            throw new StartProblem("databaseVersion", Map.of("home", folder, "found", found, "needed", major));
        }
    }

    @Override
    public String toString() {
        return folder.toString();
    }

    @Override
    public void close() throws IOException {
        lock.close();
    }
}
