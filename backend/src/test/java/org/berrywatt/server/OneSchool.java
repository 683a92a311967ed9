package org.berrywatt.server;

import io.netty.buffer.Unpooled;
import io.netty.handler.codec.http.DefaultFullHttpRequest;
import io.netty.handler.codec.http.FullHttpRequest;
import io.netty.handler.codec.http.HttpHeaderNames;
import io.netty.handler.codec.http.HttpHeaderValues;
import io.netty.handler.codec.http.HttpMethod;
import io.netty.handler.codec.http.HttpVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Passes;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.messaging.simp.SimpMessagingTemplate;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Measures one school on one machine, phones and Walls included, and prints ratios: each figure beside the least that the same
 * database and the same broker could do in the same run. Started by {@code deploy/one-school.sh} for all of it or for {@code accepting}, {@code telling} or {@code growth}.
 */
final class OneSchool {

    private static final int PHONES = Integer.getInteger("berrywatt.school.phones", 500);
    private static final int WALLS = 20;
    private static final int READINGS = Integer.getInteger("berrywatt.school.readings", 4000);
    private static final int ROUNDS = Integer.getInteger("berrywatt.school.rounds", 40);
    private static final int WARM_UP = 5;
    private static final int MOST_BATCHES = Integer.getInteger("berrywatt.school.batches", 40);
    private static final int NO_FASTER = 5;
    private static final int ACCEPTING_ROUNDS = 5;
    private static final int HANDS = 10;
    private static final int TEAMS = 50;
    private static final int CELLS_PER_TEAM = 3;

    private final ConfigurableApplicationContext server;
    private final JdbcClient database;
    private final int port;

    private OneSchool(ConfigurableApplicationContext server) {
        this.server = server;
        this.database = server.getBean(JdbcClient.class);
        this.port = server.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
    }

    public static void main(String[] arguments) throws Exception {
        var home = ServerProcess.newHome();
        var programs = Path.of("target/database-programs").toAbsolutePath();
        try (var server = SpringApplication.run(
                Berrywatt.class,
                "--server.port=0",
                "--berrywatt.demo=off",
                "--berrywatt.home=" + home,
                "--berrywatt.programs=" + programs)) {
            var school = new OneSchool(server);
            var wanted = arguments.length == 0 ? List.of("accepting", "telling", "growth") : List.of(arguments);
            if (wanted.contains("accepting")) {
                school.measureAccepting();
            }
            if (wanted.contains("telling")) {
                school.measureTelling();
            }
            if (wanted.contains("growth")) {
                new Growth(server).measure();
            }
        }
        System.exit(0);
    }

    /** Round by round beside each other, since a machine is not equally fast all the time. */
    private void measureAccepting() throws Exception {
        warmUp();
        say("bytes stored per reading, indexes and receipt included: %d", bytesPerReading());
        var rounds = new ArrayList<AcceptingRound>();
        for (int number = 1; number <= ACCEPTING_ROUNDS; number++) {
            var round = acceptingRound();
            say("round %d: %s", number, round);
            rounds.add(round);
        }
        Promise.keep("accepting", AcceptingRound.rows(rounds, PHONES, READINGS));
    }

    private AcceptingRound acceptingRound() throws Exception {
        var day = new SchoolDay(new Rehearsal(server), TEAMS);
        var copy = new BareRows(
                server.getBean(JdbcTemplate.class), server.getBean(TransactionTemplate.class), CELLS_PER_TEAM * TEAMS);
        return new AcceptingRound(
                inParallel(HANDS, READINGS, copy::insert),
                inParallel(HANDS, READINGS, number -> day.fill(1)),
                accepting(PHONES, READINGS),
                asking(PHONES, READINGS));
    }

    /** The first tens of thousands of readings meet a server that is still being compiled, so until it gets no faster. */
    private void warmUp() throws Exception {
        double best = 0;
        for (int batch = 0, sinceBest = 0; batch < MOST_BATCHES && sinceBest < NO_FASTER; batch++, sinceBest++) {
            double now = accepting(HANDS, READINGS);
            say("warming up: %.0f readings/s", now);
            if (now > best) {
                best = now;
                sinceBest = 0;
            }
        }
    }

    /** Requests a second that store nothing, from a number of phones at once. */
    private double asking(int phones, int requests) {
        var pass = pass(new SchoolDay(new Rehearsal(server), 1), 0);
        try (var crowd = new Crowd(port, phones)) {
            return crowd.perSecond(requests, (phone, number) -> request(HttpMethod.GET, "/api/access", pass, ""));
        }
    }

    /** Readings a second in a day of its own, from a number of phones at once, each that of a cell. */
    private double accepting(int phones, int readings) {
        var day = new SchoolDay(new Rehearsal(server), TEAMS);
        int cells = CELLS_PER_TEAM * TEAMS;
        var passes = IntStream.range(0, cells).mapToObj(cell -> pass(day, cell)).toList();
        try (var crowd = new Crowd(port, phones)) {
            return crowd.perSecond(readings, (phone, number) -> {
                int cell = phone % cells;
                return request(HttpMethod.PUT, SchoolDay.newReading(), passes.get(cell), day.reading(cell, number));
            });
        }
    }

    private FullHttpRequest request(HttpMethod method, String address, String pass, String json) {
        var body = Unpooled.copiedBuffer(json, StandardCharsets.UTF_8);
        var request = new DefaultFullHttpRequest(HttpVersion.HTTP_1_1, method, address, body);
        request.headers()
                .set(HttpHeaderNames.HOST, "localhost:" + port)
                .set(HttpHeaderNames.COOKIE, "berrywatt-pass=" + pass + "; XSRF-TOKEN=any")
                .set("X-XSRF-TOKEN", "any")
                .set(HttpHeaderNames.CONTENT_TYPE, HttpHeaderValues.APPLICATION_JSON)
                .set(HttpHeaderNames.CONTENT_LENGTH, body.readableBytes());
        return request;
    }

    private void measureTelling() throws Exception {
        var day = new SchoolDay(new Rehearsal(server), (ROUNDS + WARM_UP + 2) / 3);
        var room = new Telling(day, server.getBean(SimpMessagingTemplate.class));
        double[] told = new double[ROUNDS];
        double[] bare = new double[ROUNDS];
        try (var ears = new Listeners(port, room.topic(), PHONES + WALLS)) {
            for (int round = -WARM_UP; round < ROUNDS; round++) {
                var phone = phone(day, round + WARM_UP);
                double tellingMs = room.tellMs(ears, phone);
                double bareMs = room.bareMs(ears, phone, -round - 100);
                if (round >= 0) {
                    told[round] = tellingMs;
                    bare[round] = bareMs;
                }
            }
        }
        Arrays.sort(told);
        Arrays.sort(bare);
        say(
                "from acceptance to the last of %d: median %.1f ms, slowest %.1f ms; bare broadcast of the same payload (%d bytes): %.1f, %.1f",
                PHONES + WALLS,
                told[ROUNDS / 2],
                told[ROUNDS - 1],
                room.payloadBytes(phone(day, 0)),
                bare[ROUNDS / 2],
                bare[ROUNDS - 1]);
        say(
                "ratio at the median %.2f (goal 1.5), of the slowest %.2f (goal 2)",
                told[ROUNDS / 2] / bare[ROUNDS / 2], told[ROUNDS - 1] / bare[ROUNDS - 1]);
        Promise.keep(
                "telling",
                List.of(
                        toldRow("median", told[ROUNDS / 2], bare[ROUNDS / 2], 1.5),
                        toldRow("slowest round", told[ROUNDS - 1], bare[ROUNDS - 1], 2)));
    }

    private static String toldRow(String which, double toldMs, double bareMs, double most) {
        return Promise.row(
                "from the acceptance of a reading to the last of %d listeners, %s".formatted(PHONES + WALLS, which),
                "a bare broadcast of the same payload in the same run, %d rounds".formatted(ROUNDS),
                "≤ " + most,
                String.format(Locale.ROOT, "%.2f (%.1f ms, %.1f ms)", toldMs / bareMs, toldMs, bareMs),
                toldMs <= most * bareMs);
    }

    private Browser phone(SchoolDay day, int cell) {
        return Browser.holding(pass(day, cell), "http://localhost:" + port);
    }

    private String pass(SchoolDay day, int cell) {
        return server.getBean(Passes.class)
                .issue(new Caller.TeamMember(day.team(cell), day.id()), new MockHttpServletRequest())
                .getValue();
    }

    private long bytesPerReading() {
        database.sql("checkpoint").update();
        return database.sql("select (pg_total_relation_size('reading') + pg_total_relation_size('receipt'))"
                        + " / (select count(*) from reading)")
                .query(Long.class)
                .single();
    }

    /** Times per second that many hands at once get a number of things done. */
    private static double inParallel(int hands, int things, Thing thing) throws Exception {
        var pool = Executors.newFixedThreadPool(hands);
        long start = System.nanoTime();
        List<Callable<Boolean>> work = IntStream.range(0, things)
                .<Callable<Boolean>>mapToObj(number -> () -> {
                    thing.happens(number);
                    return true;
                })
                .toList();
        for (var done : pool.invokeAll(work)) {
            done.get();
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        pool.shutdown();
        return things / seconds;
    }

    private interface Thing {
        void happens(int number) throws Exception;
    }

    static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format + "%n", values);
    }
}
