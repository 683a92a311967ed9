package org.berrywatt.server;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a server and its database hold at a moment, after everything that nobody needs was collected. From the tools of the JDK and
 * from Linux' {@code /proc}.
 *
 * @param live bytes of all objects that are reachable
 * @param resident bytes of memory that the process occupies, kB
 * @param threads of the server
 * @param files open files and sockets of the server
 * @param connections of whoever to the database
 * @param objects how many there are of each class of this project
 */
record ProcessSample(long live, long resident, int threads, int files, int connections, Map<String, Long> objects) {

    private static final Pattern CLASS =
            Pattern.compile("^ *\\d+: +(\\d+) +\\d+ +(org\\.berrywatt\\.\\S+)", Pattern.MULTILINE);
    private static final Pattern TOTAL = Pattern.compile("^Total +\\d+ +(\\d+)", Pattern.MULTILINE);
    private static final Pattern RESIDENT = Pattern.compile("VmRSS:\\s+(\\d+) kB");
    private static final int PORT_LINE = 3;

    static ProcessSample of(ServerProcess server, Path home) throws IOException, SQLException {
        var process = Path.of("/proc", String.valueOf(server.handle().pid()));
        var histogram = histogram(server.handle().pid());
        return new ProcessSample(
                number(TOTAL, histogram),
                number(RESIDENT, Files.readString(process.resolve("status"))) * 1024,
                entries(process.resolve("task")),
                entries(process.resolve("fd")),
                connections(home),
                objects(histogram));
    }

    /** Collects garbage first. */
    private static String histogram(long pid) throws IOException {
        var tool = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        var process = new ProcessBuilder(tool, String.valueOf(pid), "GC.class_histogram")
                .redirectErrorStream(true)
                .start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static long number(Pattern pattern, String text) {
        Matcher found = pattern.matcher(text);
        if (!found.find()) {
            throw new IllegalStateException("no " + pattern + " in " + text);
        }
        return Long.parseLong(found.group(1));
    }

    private static int entries(Path folder) throws IOException {
        try (var all = Files.list(folder)) {
            return (int) all.count();
        }
    }

    /** The address of the database that a server started in this home, with its password. */
    static String database(Path home) throws IOException {
        var port = Files.readAllLines(home.resolve("database/postmaster.pid")).get(PORT_LINE);
        return "jdbc:postgresql://127.0.0.1:" + port.strip() + "/postgres?user=postgres&password="
                + Files.readString(home.resolve("database.password")).strip();
    }

    private static int connections(Path home) throws IOException, SQLException {
        try (var own = DriverManager.getConnection(database(home));
                var statement = own.createStatement();
                var row = statement.executeQuery(
                        "select count(*) - 1 from pg_stat_activity where backend_type = 'client backend'")) {
            row.next();
            return row.getInt(1);
        }
    }

    private static Map<String, Long> objects(String histogram) {
        var counts = new HashMap<String, Long>();
        CLASS.matcher(histogram).results().forEach(row -> counts.put(row.group(2), Long.parseLong(row.group(1))));
        return counts;
    }
}
