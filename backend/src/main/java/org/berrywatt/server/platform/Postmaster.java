package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;

/** The database's process. It is no child of ours and outlives a killed server. */
record Postmaster(ProcessHandle process) {

    private static final int PATIENCE_SECONDS = 10;
    private static final Pattern NUMBER = Pattern.compile("\\s*(\\d{1,9})\\s");
    private static final long NOBODY = -1;

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
        var number = NUMBER.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
        return number.lookingAt() ? Long.parseLong(number.group(1)) : NOBODY;
    }

    /** A power cut may leave a file that says nothing; PostgreSQL would take it for another server that is about to start. */
    static void forgetUnreadable(Path data) throws IOException {
        var file = data.resolve("postmaster.pid");
        if (Files.exists(file) && pid(file) == NOBODY) {
            Files.delete(file);
        }
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
