package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A database process that outlived a killed server; it must end before the data can be opened again. */
final class LeftoverPostmaster {

    private static final int PATIENCE_SECONDS = 10;

    private LeftoverPostmaster() {}

    static void end(Path data) {
        try {
            var file = data.resolve("postmaster.pid");
            if (Files.exists(file)) {
                ProcessHandle.of(pid(file))
                        .filter(LeftoverPostmaster::isPostgres)
                        .ifPresent(LeftoverPostmaster::end);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static long pid(Path file) throws IOException {
        var lines = Files.readAllLines(file);
        return lines.isEmpty() ? -1 : Long.parseLong(lines.get(0).strip());
    }

    /** The number may belong to any other process after a restart of the machine. */
    private static boolean isPostgres(ProcessHandle process) {
        return process.info()
                .command()
                .map(Path::of)
                .map(Path::getFileName)
                .filter(name -> name.toString().startsWith("postgres"))
                .isPresent();
    }

    private static void end(ProcessHandle postmaster) {
        postmaster.destroy();
        try {
            postmaster.onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException | ExecutionException stubborn) {
            postmaster.destroyForcibly();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
