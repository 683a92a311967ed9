package org.berrywatt.server;

import static org.awaitility.Awaitility.await;
import static org.berrywatt.server.OneSchool.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A disk that fills up under a class that sends, and has room again later. Started by {@code deploy/full-disk.sh} with the disk's folder. */
final class FullDisk {

    private static final int PHONES = 12;
    private static final int READINGS_EACH = 40;
    private static final int PARTS_OF_THE_LOG = 4;
    private static final Pattern CODE = Pattern.compile("\"code\":\"([^\"]+)\"");

    private final ConcurrentLinkedQueue<UUID> acknowledged = new ConcurrentLinkedQueue<>();
    private final Map<String, Integer> heard = new ConcurrentHashMap<>();
    private final Path disk;
    private final Path home;

    private FullDisk(Path disk) {
        this.disk = disk;
        this.home = disk.resolve("home");
    }

    public static void main(String[] arguments) throws Exception {
        new FullDisk(Path.of(arguments[0])).run();
        System.exit(0);
    }

    private void run() throws Exception {
        try (var server = ServerProcess.ofClasses(home, "-Xmx512m").ready()) {
            var teacher = Browser.of(server);
            var room = MeasuredClass.layOut(teacher, server.setupKey(), PHONES);
            var hands = Executors.newFixedThreadPool(PHONES);
            var sending = IntStream.range(0, PHONES)
                    .mapToObj(phone -> CompletableFuture.runAsync(() -> send(teacher, room, phone), hands))
                    .toList();
            await().atMost(Duration.ofMinutes(1)).until(() -> acknowledged.size() > PHONES);
            int before = fill();
            await().atMost(Duration.ofMinutes(1)).until(() -> !heard.isEmpty());
            int meanwhile = acknowledged.size() - before;
            Files.delete(disk.resolve("ballast"));
            long start = System.nanoTime();
            int full = acknowledged.size();
            await().atMost(Duration.ofMinutes(2)).until(() -> acknowledged.size() > full);
            long backMs = (System.nanoTime() - start) / 1_000_000;
            sending.forEach(CompletableFuture::join);
            report(room.stored(teacher), meanwhile, backMs);
        }
    }

    private void report(List<UUID> stored, int meanwhile, long backMs) throws IOException {
        boolean once = stored.size() == acknowledged.size() && stored.containsAll(acknowledged);
        say(
                "acknowledged before, while and after the disk was full: %d (%d while); stored: %d; answers: %s; back after %d ms",
                acknowledged.size(), meanwhile, stored.size(), heard, backMs);
        Promise.keep(
                "full-disk",
                List.of(Promise.row(
                        "the disk fills up under 12 phones and has room again: acknowledged readings, and those stored",
                        "phones are answered %s; the server goes on by itself %.1f s after there is room"
                                .formatted(heard, backMs / 1000.0),
                        "equal",
                        acknowledged.size() + ", " + stored.size(),
                        once)));
    }

    /** Takes all the room there is, and the log's parts that are kept in reserve. */
    private int fill() throws IOException, SQLException {
        int before = acknowledged.size();
        try (var ballast = Files.newOutputStream(disk.resolve("ballast"))) {
            var block = new byte[4096];
            while (true) {
                ballast.write(block);
            }
        } catch (IOException full) {
            say("the disk is full: %s", String.valueOf(full.getMessage()));
        }
        for (int part = 0; part < PARTS_OF_THE_LOG; part++) {
            nextPartOfTheLog();
        }
        return before;
    }

    private void nextPartOfTheLog() {
        try (var connection = DriverManager.getConnection(ProcessSample.database(home));
                var statement = connection.createStatement()) {
            statement.execute("select pg_switch_wal()");
            statement.execute("create table if not exists filler (word text)");
            statement.execute("insert into filler values ('x')");
        } catch (IOException | SQLException full) {
            say("the database says: %s", String.valueOf(full.getMessage()));
        }
    }

    /** As a phone's outbox does. */
    private void send(Browser phone, MeasuredClass room, int number) {
        UUID cell = room.cells.get(number);
        for (int reading = 0; reading < READINGS_EACH; reading++) {
            var id = UUID.randomUUID();
            var body = reading == 0 ? room.dark(cell, "0 mV") : room.lit(cell, 300 + reading + " mV", "900 uA");
            await().atMost(Duration.ofMinutes(5))
                    .pollInterval(Duration.ofMillis(100))
                    .pollInSameThread()
                    .until(() -> isAcknowledged(phone, id, body));
            acknowledged.add(id);
        }
    }

    private boolean isAcknowledged(Browser phone, UUID id, String body) throws InterruptedException {
        try {
            var answer = phone.put("/api/readings/" + id, body);
            if (answer.statusCode() != 200) {
                var code = CODE.matcher(answer.body());
                heard.merge(answer.statusCode() + " " + (code.find() ? code.group(1) : "?"), 1, Integer::sum);
            }
            return answer.statusCode() == 200;
        } catch (IOException noAnswer) {
            heard.merge("no answer", 1, Integer::sum);
            return false;
        }
    }
}
