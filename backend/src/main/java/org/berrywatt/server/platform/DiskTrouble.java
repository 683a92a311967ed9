package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Why a home cannot be written or its database not started, with the way out that fits. */
final class DiskTrouble {

    /** PostgreSQL writes its log of changes in parts of 16 MB; one for it, and as much for data. */
    private static final long LEAST_ROOM_MB = 32;

    private static final long BYTES_PER_MB = 1_000_000;
    private static final String FULL = "No space left on device";

    /** Complaints that have nothing to do with the data. */
    private static final Pattern OF_THE_MACHINE =
            Pattern.compile("socket|shared memory|semaphore|lock file|permission|out of memory|password");

    private DiskTrouble() {}

    /** Something in a home could not be written. */
    static StartProblem writing(Path home, IOException cause) {
        return isFull(home, String.valueOf(cause.getMessage()))
                ? full(home, cause)
                : new StartProblem("homeUnwritable", Map.of("home", home), cause);
    }

    /**
     * A home's database did not start.
     *
     * @param log what its programs wrote while they tried
     * @param hadData whether there was a database already
     */
    static StartProblem starting(Path home, DatabaseLog log, boolean hadData, Exception cause) {
        var complaint = log.reason().orElse("");
        if (isFull(home, complaint)) {
            return full(home, cause);
        }
        boolean damaged = hadData
                && !complaint.isEmpty()
                && !OF_THE_MACHINE.matcher(complaint).find();
        var reason = complaint.isEmpty() ? firstLine(cause) : complaint;
        return new StartProblem(
                damaged ? "databaseDamaged" : "databaseFailed",
                Map.of("home", home, "log", log.file(), "reason", reason),
                cause);
    }

    private static StartProblem full(Path home, Exception cause) {
        return new StartProblem("diskFull", Map.of("home", home, "room", roomMb(home), "needed", LEAST_ROOM_MB), cause);
    }

    private static boolean isFull(Path home, String complaint) {
        return complaint.contains(FULL) || roomMb(home) < LEAST_ROOM_MB;
    }

    /** What is free where a folder is, or will be. */
    private static long roomMb(Path folder) {
        try {
            return Files.getFileStore(nearest(folder)).getUsableSpace() / BYTES_PER_MB;
        } catch (IOException unknown) {
            return Long.MAX_VALUE;
        }
    }

    private static Path nearest(Path folder) {
        @Nullable Path parent = folder.getParent();
        return Files.exists(folder) || parent == null ? folder : nearest(parent);
    }

    private static String firstLine(Exception cause) {
        return String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
    }
}
