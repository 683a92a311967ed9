package org.berrywatt.server;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import tools.jackson.databind.json.JsonMapper;

/**
 * One lab day of ten teams with three phones each, a Wall and a teacher's desk, all of them over the network, ten times as fast
 * as a class: what {@code docs/growth.md} assumes of one, 600 readings in three hours, comes at 36 a minute.
 */
@SuppressWarnings("FutureReturnValueIgnored") // what is done later counts its own failures
final class BusyClass implements AutoCloseable {

    static final int TEAMS = 10;
    static final int PHONES = 30;
    private static final int CELLS_PER_TEAM = 3;
    private static final long ENTRY_EVERY_MS = 50_000; // of each of 30 phones: 0.6 readings a second
    private static final long AWAY_EVERY_MS = 30_000; // a screen that goes dark after 5 minutes, ten times as fast
    private static final long PRESENCE_EVERY_MS = 3_000; // every half minute, ten times as fast
    private static final long TEACHER_EVERY_MS = 6_000;

    /** What happened, over all days. */
    record Count(AtomicInteger readings, AtomicInteger requests, AtomicInteger dials, AtomicInteger failures) {
        Count() {
            this(new AtomicInteger(), new AtomicInteger(), new AtomicInteger(), new AtomicInteger());
        }
    }

    private final ServerProcess server;
    private final Browser teacher;
    private final Count count;
    private final ScheduledExecutorService hands;
    private final MeasuredClass room;
    private final List<String> topics;
    private final List<Screen> screens = new ArrayList<>();
    private final AtomicLong news = new AtomicLong();
    private volatile boolean over;

    private BusyClass(
            ServerProcess server, Browser teacher, Count count, ScheduledExecutorService hands, MeasuredClass room) {
        this.server = server;
        this.teacher = teacher;
        this.count = count;
        this.hands = hands;
        this.room = room;
        this.topics = List.of(topic("leaderboard"), topic("room"));
    }

    /** Lays a day out and lets all of them begin. */
    static BusyClass begin(ServerProcess server, Browser teacher, Count count, ScheduledExecutorService hands)
            throws IOException, InterruptedException {
        var room = MeasuredClass.another(teacher, TEAMS * CELLS_PER_TEAM);
        for (UUID cell : room.cells) {
            MeasuredClass.put(teacher, "/api/readings/" + UUID.randomUUID(), room.dark(cell, "0 mV"));
        }
        var busy = new BusyClass(server, teacher, count, hands, room);
        busy.open();
        return busy;
    }

    private void open() throws IOException, InterruptedException {
        var codes = new JsonMapper()
                .readTree(teacher.get("/api/labdays/" + room.day + "/teams").body())
                .findValuesAsString("code");
        for (int phone = 0; phone < PHONES; phone++) {
            var browser = Browser.of(server);
            asked(browser.post("/api/access/join", "{\"code\": \"" + codes.get(phone % TEAMS) + "\"}")
                    .statusCode());
            begin(new Screen(browser, phone));
        }
        begin(new Screen(teacher, -1));
        every(TEACHER_EVERY_MS, this::teach);
    }

    private void begin(Screen screen) {
        screens.add(screen);
        every(1_000, screen::look);
        every(AWAY_EVERY_MS, screen::comeAndGo);
        if (screen.phone >= 0) {
            every(ENTRY_EVERY_MS, screen::enter);
            every(PRESENCE_EVERY_MS, screen::tellPresence);
        }
    }

    private interface Deed {
        void happens() throws IOException, InterruptedException;
    }

    /** Again and again, at a pace that differs by half. */
    private void every(long aboutMs, Deed deed) {
        long pause = aboutMs / 2 + ThreadLocalRandom.current().nextLong(aboutMs);
        hands.schedule(
                () -> {
                    if (!over) {
                        tried(deed);
                        every(aboutMs, deed);
                    }
                },
                pause,
                TimeUnit.MILLISECONDS);
    }

    private void tried(Deed deed) {
        try {
            deed.happens();
        } catch (Exception failed) {
            if (!over) {
                count.failures.incrementAndGet();
                System.err.println(failed);
            }
        }
    }

    /** The lamp is read, the class is told something, findings and desk are looked at. */
    private void teach() throws IOException, InterruptedException {
        UUID fresh = UUID.randomUUID();
        switch (ThreadLocalRandom.current().nextInt(5)) {
            case 0 ->
                put(teacher, "/api/irradiances/" + fresh, """
                    {"stationId": "%s", "reading": {"text": "%d W/m2"}, "noticedAt": "2026-11-25T10:00:00Z"}""".formatted(
                                room.station, 990 + ThreadLocalRandom.current().nextInt(20)));
            case 1 -> put(teacher, "/api/announcements/" + fresh, """
                    {"labDayId": "%s", "words": "Goggles on.", "minutes": 1}""".formatted(room.day));
            case 2 -> put(teacher, "/api/timers/" + fresh, """
                    {"labDayId": "%s", "words": "Bake", "durationS": 20}""".formatted(room.day));
            case 3 -> get(teacher, "/findings", "/curves");
            default -> get(teacher, "/report", "/phones", "/tables");
        }
    }

    private String topic(String kind) {
        return "/topic/labday." + room.day + "." + kind;
    }

    private void put(Browser browser, String address, String json) throws IOException, InterruptedException {
        asked(browser.put(address, json).statusCode());
    }

    private void get(Browser browser, String... ofTheDay) throws IOException, InterruptedException {
        for (String what : ofTheDay) {
            asked(browser.get("/api/labdays/" + room.day + what).statusCode());
        }
    }

    private void asked(int status) throws IOException {
        count.requests.incrementAndGet();
        if (status != 200) {
            throw new IOException("answered " + status);
        }
    }

    @Override
    public void close() {
        over = true;
        screens.forEach(Screen::leave);
    }

    /** A phone, or with number -1 the Wall and the Desk on the teacher's laptop. */
    private final class Screen {

        private final Browser browser;
        private final int phone;
        private final UUID phoneId = UUID.randomUUID();
        private final Random chance;
        private Line line;
        private long seen;

        Screen(Browser browser, int phone) {
            this.browser = browser;
            this.phone = phone;
            this.chance = new Random(phone);
            this.line = dial();
        }

        private Line dial() {
            count.dials.incrementAndGet();
            return Line.open(server.port(), topics, news::incrementAndGet);
        }

        /** Of a team's phones one is looked at, and fetches what changed. */
        synchronized void look() throws IOException, InterruptedException {
            line.beat();
            if (phone < TEAMS && news.get() != seen) {
                seen = news.get();
                refresh();
            }
        }

        private void refresh() throws IOException, InterruptedException {
            get(browser, "", "/teams", "/stations", "/cells", "/lesson");
            if (phone < 0) {
                get(browser, "/desk", "/leaderboard");
                return;
            }
            for (int cell = 0; cell < CELLS_PER_TEAM; cell++) {
                asked(browser.get("/api/cells/" + cell(cell) + "/readings").statusCode());
                asked(browser.get("/api/cells/" + cell(cell) + "/result").statusCode());
            }
        }

        synchronized void comeAndGo() throws IOException, InterruptedException {
            switch (chance.nextInt(3)) {
                case 0 -> line.sayGoodBye();
                case 1 -> line.tear();
                default -> {} // silent from now on: nobody beats for it
            }
            line = dial();
            get(browser, "/leaderboard", "/room");
            refresh();
        }

        void enter() throws IOException, InterruptedException {
            UUID cell = cell(chance.nextInt(CELLS_PER_TEAM));
            int mV = 350 + chance.nextInt(100);
            put(
                    browser,
                    "/api/readings/" + UUID.randomUUID(),
                    chance.nextInt(4) == 0 ? room.swept(cell, mV) : room.lit(cell, mV + " mV", "900 uA"));
            count.readings.incrementAndGet();
        }

        void tellPresence() throws IOException, InterruptedException {
            put(browser, "/api/phones/" + phoneId, "{\"waiting\": 0, \"refusedCodes\": []}");
        }

        private UUID cell(int ofTheTeam) {
            return room.cells.get(phone % TEAMS * CELLS_PER_TEAM + ofTheTeam);
        }

        void leave() {
            line.tear();
        }
    }
}
