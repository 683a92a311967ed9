package org.berrywatt.server;

import static org.berrywatt.server.OneSchool.say;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Function;

/**
 * Classes come and go at one server, each for a quarter of the time and ten times as fast as a real one, while its memory, threads, files
 * and connections are counted every minute. Started by {@code deploy/long-run.sh}; the first word is how many minutes.
 */
final class LongRun {

    private static final int QUARTERS = 4;
    private static final int SAMPLES_EACH = 15;
    private static final int DAYS_REMEMBERED = 4;
    private static final int READINGS_BEFORE = 4;

    /** As much as a small laptop has to spare; without a limit the machine's memory decides when it is worth collecting. */
    private static final String HEAP = "-Xmx512m";

    private final Path home = ServerProcess.newHome();
    private final ScheduledExecutorService hands = Executors.newScheduledThreadPool(24);
    private final BusyClass.Count count = new BusyClass.Count();
    private final Course course = new Course();
    private final int minutes;

    private LongRun(int minutes) throws IOException {
        this.minutes = minutes;
    }

    public static void main(String[] arguments) throws Exception {
        new LongRun(arguments.length == 0 ? 60 : Integer.parseInt(arguments[0])).run();
        System.exit(0);
    }

    private void run() throws Exception {
        try (var server = ServerProcess.ofClasses(home, HEAP).ready()) {
            var teacher = Browser.of(server);
            MeasuredClass.layOut(teacher, server.setupKey(), 1);
            fillWhatIsRemembered(teacher);
            for (int quarter = 0; quarter < QUARTERS; quarter++) {
                var busy = BusyClass.begin(server, teacher, count, hands);
                try (busy) {
                    attend(server, quarter);
                }
            }
        }
        hands.shutdownNow();
        report();
    }

    /**
     * So that what is kept on purpose is there before anything is compared: 400 judged cells, and of four days the boards with
     * their draws, 8 MB each.
     */
    private static void fillWhatIsRemembered(Browser teacher) throws IOException, InterruptedException {
        for (int day = 0; day < DAYS_REMEMBERED; day++) {
            var room = MeasuredClass.another(teacher, BusyClass.TEAMS * 3);
            enterAll(teacher, room, cell -> room.dark(cell, "0 mV"));
            for (int mV = 400; mV < 400 + READINGS_BEFORE; mV++) {
                String voltage = mV + " mV";
                enterAll(teacher, room, cell -> room.lit(cell, voltage, "900 uA"));
                room.leaderboard(teacher);
            }
            enterAll(teacher, room, cell -> room.swept(cell, 400));
            room.leaderboard(teacher);
        }
    }

    private static void enterAll(Browser teacher, MeasuredClass room, Function<UUID, String> reading)
            throws IOException, InterruptedException {
        for (UUID cell : room.cells) {
            MeasuredClass.put(teacher, "/api/readings/" + UUID.randomUUID(), reading.apply(cell));
        }
    }

    private void attend(ServerProcess server, int quarter) throws Exception {
        for (int sample = 0; sample < SAMPLES_EACH; sample++) {
            Thread.sleep(minutes * 60_000L / QUARTERS / SAMPLES_EACH);
            var found = ProcessSample.of(server, home);
            course.add(quarter, found);
            say(
                    "%2d.%02d live %5.1f MB, resident %4d MB, %d threads, %d files, %d connections; %d readings, %d requests, %d dials, %d failures",
                    quarter + 1,
                    sample + 1,
                    found.live() / 1e6,
                    found.resident() / 1_000_000,
                    found.threads(),
                    found.files(),
                    found.connections(),
                    count.readings().get(),
                    count.requests().get(),
                    count.dials().get(),
                    count.failures().get());
        }
    }

    private void report() throws IOException {
        course.print();
        List<String> rows = new ArrayList<>(course.rows(minutes));
        rows.add(Promise.row(
                "refused or failed requests of this run",
                "%d requests, %d readings, %d sockets opened"
                        .formatted(
                                count.requests().get(),
                                count.readings().get(),
                                count.dials().get()),
                "0",
                String.valueOf(count.failures().get()),
                count.failures().get() == 0));
        Promise.keep("long-run", rows);
    }
}
