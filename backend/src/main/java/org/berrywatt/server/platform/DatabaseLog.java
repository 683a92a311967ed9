package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** What the database's programs wrote since a moment; they name the reason when they do not start. */
record DatabaseLog(Path file, long from) {

    private static final int MOST_BYTES = 100_000;
    private static final Pattern COMPLAINT =
            Pattern.compile("(?:PANIC|FATAL|initdb: error): +(?!terminating|the database system is)(.+)");

    /** The program that starts the database complains of itself and ends; but for one remark, after which it goes on. */
    private static final Pattern GIVEN_UP = Pattern.compile("^pg_ctl: (?!another server)", Pattern.MULTILINE);

    /** What is written from now on. */
    static DatabaseLog fromNow(Path file) {
        return new DatabaseLog(file, file.toFile().length());
    }

    /** The first complaint that ended a program; later ones follow from it. */
    Optional<String> reason() {
        return COMPLAINT.matcher(written()).results().map(DatabaseLog::words).findFirst();
    }

    /** Whether the program that starts the database came back without one. */
    boolean saysThatItGaveUp() {
        return GIVEN_UP.matcher(written()).find();
    }

    private static String words(MatchResult complaint) {
        return complaint.group(1).strip();
    }

    private String written() {
        try (var log = Files.newByteChannel(file)) {
            log.position(Math.max(from, log.size() - MOST_BYTES));
            var bytes = ByteBuffer.allocate(MOST_BYTES);
            log.read(bytes);
            return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            return "";
        }
    }
}
