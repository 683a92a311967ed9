package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.server.live.FollowingPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Readings of many clients while server and database are killed under them, at moments drawn from a seed. A small class here;
 * {@code deploy/kill-test.sh} runs it at full size.
 */
class AcknowledgedReadingsIT {

    private static final int CLIENTS = Integer.getInteger("berrywatt.kill.clients", 12);
    private static final int READINGS = Integer.getInteger("berrywatt.kill.readings", 240);
    private static final int KILLS = Integer.getInteger("berrywatt.kill.kills", 2);
    private static final long SEED = Long.getLong("berrywatt.kill.seed", 2);
    private static final int CELLS = 30;

    private enum Victim {
        SERVER,
        DATABASE,
        BOTH
    }

    private final Path home = ServerProcess.newHome();
    private final ConcurrentLinkedQueue<UUID> acknowledged = new ConcurrentLinkedQueue<>();
    private final AtomicInteger next = new AtomicInteger();
    private final ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
    private final Random chance = new Random(SEED);
    private ServerProcess server;
    private Browser teacher;
    private MeasuredClass room;

    AcknowledgedReadingsIT() throws IOException {}

    @BeforeEach
    void layOut() throws Exception {
        server = ServerProcess.start(home).ready();
        teacher = Browser.of(server);
        room = MeasuredClass.layOut(teacher, server.setupKey(), CELLS);
    }

    @AfterEach
    void end() {
        clients.shutdownNow();
        server.close();
    }

    @Test
    void areThereOnceHoweverOftenServerAndDatabaseAreKilled() throws Exception {
        try (var wall = FollowingPage.at(server.port(), room.day)) {
            var sending = Stream.generate(() -> CompletableFuture.runAsync(this::send, clients))
                    .limit(CLIENTS)
                    .toList();
            List<Victim> victims = killNowAndThen();
            sending.forEach(CompletableFuture::join);
            server.ready();

            assertThat(acknowledged).hasSize(READINGS);
            assertThat(room.stored(teacher)).containsExactlyInAnyOrderElementsOf(acknowledged);
            assertThat(teacher.put("/api/readings/" + acknowledged.peek(), room.dark(room.cells.get(0), "9 mV"))
                            .statusCode())
                    .as("another reading under the same id")
                    .isEqualTo(409);
            var last = room.leaderboard(teacher);
            await().atMost(Duration.ofMinutes(1))
                    .untilAsserted(() -> assertThat(wall.shown()).isEqualTo(last.toString()));
            var places = last.get("body");
            kill(Victim.SERVER);
            server.ready();
            assertThat(room.leaderboard(teacher).get("body")).isEqualTo(places);
            keep(victims);
        }
    }

    private static void keep(List<Victim> victims) throws IOException {
        var row = Promise.row(
                "acknowledged readings that are stored once, the leaderboard that of a fresh start, whoever was killed",
                "%d clients, seed %d, killed in this order: %s".formatted(CLIENTS, SEED, victims),
                "all of " + READINGS,
                "all",
                true);
        Promise.keep("kill-test", List.of(row));
        System.out.println(row);
    }

    private List<Victim> killNowAndThen() throws Exception {
        var moments = IntStream.generate(() -> READINGS / 20 + chance.nextInt(READINGS * 8 / 10))
                .limit(KILLS)
                .sorted()
                .toArray();
        var victims = chance.ints(KILLS, 0, Victim.values().length)
                .mapToObj(drawn -> Victim.values()[drawn])
                .toList();
        for (int kill = 0; kill < KILLS; kill++) {
            int moment = moments[kill];
            await().atMost(Duration.ofMinutes(10)).until(() -> acknowledged.size() >= moment);
            server.ready();
            kill(victims.get(kill));
        }
        return victims;
    }

    /** A killed server is started again as whoever runs it would; a killed database is the server's to bring back. */
    private void kill(Victim victim) throws IOException {
        if (victim != Victim.SERVER) {
            await().atMost(Duration.ofMinutes(1))
                    .ignoreExceptions()
                    .until(() -> ServerProcess.databaseOf(home).destroyForcibly());
        }
        if (victim != Victim.DATABASE) {
            server.kill();
            server = server.again();
        }
    }

    /** Takes the next reading of the class until none is left. */
    private void send() {
        var outbox = new Outbox(teacher);
        for (int reading = next.getAndIncrement(); reading < READINGS; reading = next.getAndIncrement()) {
            UUID cell = room.cells.get(reading % CELLS);
            acknowledged.add(outbox.deliver(
                    reading < CELLS ? room.dark(cell, "0 mV") : room.lit(cell, 300 + reading % 200 + " mV", "900 uA")));
        }
    }
}
