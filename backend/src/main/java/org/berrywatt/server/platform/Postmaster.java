package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** The database's process. It is no child of ours and outlives a killed server. */
record Postmaster(ProcessHandle process) {

    private static final int PATIENCE_SECONDS = 10;

    /** The process that works on these data, if there is one. */
    static Optional<Postmaster> of(Path data) {
        try {
            var file = data.resolve("postmaster.pid");
            return Files.exists(file)
                    ? ProcessHandle.of(pid(file)).filter(Postmaster::isPostgres).map(Postmaster::new)
                    : Optional.empty();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    private static long pid(Path file) throws IOException {
        var lines = Files.readAllLines(file);
        return lines.isEmpty() ? -1 : Long.parseLong(lines.get(0).strip());
    }

    /** After a restart of the machine the number may belong to any other process. */
    private static boolean isPostgres(ProcessHandle process) {
        return process.info()
                .command()
                .map(Path::of)
                .map(Path::getFileName)
                .filter(name -> name.toString().startsWith("postgres"))
                .isPresent();
    }

    void whenEnded(Runnable then) {
        var watch = new Thread(() -> afterwards(then), "database-watch");
        watch.setDaemon(true);
        watch.start();
    }

    private void afterwards(Runnable then) {
        process.onExit().join();
        then.run();
    }

    /** Ends a process that a killed server left behind; its data must be free before they can be opened again. */
    void end() {
        process.destroy();
        try {
            process.onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException | ExecutionException stubborn) {
            process.destroyForcibly();
            process.onExit().join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
