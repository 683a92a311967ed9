package org.berrywatt.server;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;

/**
 * What was promised, what was found, and where: rows of a table of {@code docs/validation.md}. {@code deploy/promises.sh} takes them
 * from the build's folder.
 */
public final class Promise {

    private static final Path KEPT = Path.of("target/promises");

    private Promise() {}

    /** A row that says yes or no. */
    public static String row(String what, String against, String wanted, String found, boolean holds) {
        return "| %s | %s | %s | %s | %s | %s |"
                .formatted(what, against, wanted, found, holds ? "yes" : "**no**", here());
    }

    /** Ratios are promised, since times depend on who else works on the machine; this says how many did. */
    private static String here() {
        var machine = ManagementFactory.getOperatingSystemMXBean();
        return String.format(
                Locale.ROOT,
                "%s, %d cores, load %.0f",
                LocalDate.now(ZoneOffset.UTC),
                machine.getAvailableProcessors(),
                machine.getSystemLoadAverage());
    }

    /** Replaces what the same measurement found before. */
    public static void keep(String measurement, List<String> rows) throws IOException {
        Files.createDirectories(KEPT);
        Files.write(KEPT.resolve(measurement + ".md"), rows);
    }
}
