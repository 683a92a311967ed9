package org.berrywatt.server;

import static org.berrywatt.server.OneSchool.say;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** What a server holds for each open socket and for each day that somebody follows. Started by {@code deploy/long-run.sh sockets}. */
final class OpenSockets {

    private static final int SOCKETS = 500;
    private static final int DAYS = 100;
    private static final double MOST_KB_A_SOCKET = 64;
    private static final double MOST_KB_A_DAY = 16;

    private OpenSockets() {}

    public static void main(String[] arguments) throws Exception {
        Path home = ServerProcess.newHome();
        try (var server = ServerProcess.ofClasses(home, "-Xmx512m").ready()) {
            var teacher = Browser.of(server);
            var room = MeasuredClass.layOut(teacher, server.setupKey(), 30);
            room.leaderboard(teacher);
            tell(server, teacher, room, 50).forEach(Line::tear);
            Thread.sleep(5_000);
            var none = ProcessSample.of(server, home);
            follow(teacher);
            var days = ProcessSample.of(server, home);
            var lines = tell(server, teacher, room, SOCKETS);
            var many = ProcessSample.of(server, home);
            lines.forEach(Line::tear);
            say(
                    "live MB at first, with %d days more, with %d sockets more: %.1f, %.1f, %.1f",
                    DAYS, SOCKETS, none.live() / 1e6, days.live() / 1e6, many.live() / 1e6);
            Promise.keep(
                    "sockets",
                    List.of(
                            row(
                                    "live objects of a server for an open socket that follows leaderboard and room",
                                    SOCKETS + " sockets over none",
                                    many.live() - days.live(),
                                    SOCKETS,
                                    MOST_KB_A_SOCKET),
                            row(
                                    "live objects of a server for a day that is followed",
                                    DAYS + " empty days over none",
                                    days.live() - none.live(),
                                    DAYS,
                                    MOST_KB_A_DAY)));
        }
        System.exit(0);
    }

    /** Opens sockets and has all of them hear of a reading. */
    private static List<Line> tell(ServerProcess server, Browser teacher, MeasuredClass room, int count)
            throws Exception {
        var heard = new CountDownLatch(count);
        List<Line> lines = new ArrayList<>();
        for (int each = 0; each < count; each++) {
            lines.add(Line.open(
                    server.port(),
                    List.of("/topic/labday." + room.day + ".leaderboard", "/topic/labday." + room.day + ".room"),
                    heard::countDown));
        }
        MeasuredClass.put(teacher, "/api/readings/" + UUID.randomUUID(), room.dark(room.cells.get(0), "0 mV"));
        if (!heard.await(1, TimeUnit.MINUTES)) {
            throw new IllegalStateException(heard.getCount() + " messages are missing");
        }
        return lines;
    }

    private static void follow(Browser teacher) throws Exception {
        for (int day = 0; day < DAYS; day++) {
            var room = MeasuredClass.another(teacher, 0);
            room.leaderboard(teacher);
            teacher.get("/api/labdays/" + room.day + "/room");
        }
    }

    private static String row(String what, String against, long bytes, int count, double most) {
        double each = bytes / 1e3 / count;
        return Promise.row(
                what,
                against,
                String.format(Locale.ROOT, "≤ %.0f kB", most),
                String.format(Locale.ROOT, "%.1f kB", each),
                each <= most);
    }
}
