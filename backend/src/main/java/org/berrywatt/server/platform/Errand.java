package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.core.env.SimpleCommandLinePropertySource;

/**
 * What the program does instead of starting the server: {@code --backup=FILE} writes the whole server to a file, while it runs
 * or not, {@code --restore=FILE} makes a new home of one, and {@code --new-password} prints a key for somebody who forgot theirs.
 */
public final class Errand {

    private static final String NEW_PASSWORD = "new-password";

    private final SimpleCommandLinePropertySource words;
    private final Path home;

    private Errand(SimpleCommandLinePropertySource words, Path home) {
        this.words = words;
        this.home = home;
    }

    /**
     * The errand that the command line asks for, if it does.
     *
     * @param defaults where {@code berrywatt.home} stands when the command line does not say it
     */
    public static Optional<Errand> of(String[] arguments, Map<String, Object> defaults) {
        var words = new SimpleCommandLinePropertySource(arguments);
        var home = words.containsProperty("berrywatt.home")
                ? words.getProperty("berrywatt.home")
                : defaults.get("berrywatt.home");
        return Stream.of("backup", "restore", NEW_PASSWORD).anyMatch(words::containsProperty)
                ? Optional.of(new Errand(words, Path.of(String.valueOf(home))))
                : Optional.empty();
    }

    /** Does it and answers the exit code: 0, or 1 after a sentence on why not. */
    public int run(PrintStream console, PrintStream complaints) {
        var texts = Texts.load();
        try {
            console.println(done(texts));
            return 0;
        } catch (StartProblem problem) {
            complaints.println(problem.sentence(texts));
            return 1;
        }
    }

    private String done(Texts texts) {
        if (words.containsProperty(NEW_PASSWORD)) {
            return texts.say("start.newPassword", Map.of("home", home, "key", newKey().text()));
        }
        var backup = words.getProperty("backup");
        if (backup != null) {
            var size = Backup.of(home, file(backup));
            return texts.say(
                    "start.backedUp", Map.of("home", home, "file", file(backup), "megabytes", megabytes(size)));
        }
        var restored = file(String.valueOf(words.getProperty("restore")));
        Restore.of(restored, home);
        return texts.say("start.restored", Map.of("home", home, "file", restored));
    }

    private ConsoleKey newKey() {
        if (!Files.isDirectory(home)) {
            throw new StartProblem("newPasswordNoHome", Map.of("home", home));
        }
        try {
            return new KeyInHome(home, Clock.systemUTC()).make();
        } catch (IOException cause) {
            throw new StartProblem("homeUnwritable", Map.of("home", home), cause);
        }
    }

    private static Path file(String word) {
        return Path.of(word).toAbsolutePath().normalize();
    }

    private static long megabytes(long bytes) {
        return Math.max(1, Math.round(bytes / 1e6));
    }
}
