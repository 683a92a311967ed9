package org.berrywatt.server.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/**
 * The key by which whoever may write into the server's home sets a password anew. The file holds its hash and when it ends, so
 * that a copy of the home opens nothing; the server need not run when the key is made.
 */
@Component
public class KeyInHome {

    private static final Logger LOG = LoggerFactory.getLogger(KeyInHome.class);
    private static final String FILE = "new-password.key";
    private static final Duration VALIDITY = Duration.ofHours(1);

    private final Path home;
    private final Path file;
    private final Clock clock;

    @Autowired
    KeyInHome(Environment settings, Clock clock) {
        this(Path.of(settings.getRequiredProperty("berrywatt.home")), clock);
    }

    KeyInHome(Path home, Clock clock) {
        this.home = home;
        this.file = home.resolve(FILE);
        this.clock = clock;
    }

    /** Puts a new key into the home, in place of an earlier one. */
    public ConsoleKey make() throws IOException {
        var key = ConsoleKey.random();
        OwnerOnly.folder(home);
        OwnerOnly.write(file, key.hash() + " " + clock.instant().plus(VALIDITY));
        return key;
    }

    /** Whether this is the key, and its hour is not over. */
    public boolean opens(String tried) {
        try {
            var parts = Files.exists(file) ? Files.readString(file).strip().split(" ") : new String[0];
            return parts.length == 2
                    && parts[0].equals(new ConsoleKey(tried).hash())
                    && clock.instant().isBefore(Instant.parse(parts[1]));
        } catch (IOException | DateTimeException unreadable) {
            LOG.warn(
                    "The key for a new password cannot be read: {}",
                    unreadable.getClass().getSimpleName());
            return false;
        }
    }

    /** Ends the key; answers false when another request did before. */
    public boolean spend() {
        try {
            return Files.deleteIfExists(file);
        } catch (IOException stays) {
            LOG.warn(
                    "The key for a new password cannot be deleted: {}",
                    stays.getClass().getSimpleName());
            return false;
        }
    }
}
