package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.server.live.FollowingPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Two servers beside each other, started at once on an empty database, with a broker between and a proxy before them. */
class ManyServersIT {

    private static final int PHONES = 6;
    private static final int READINGS_EACH = 20;
    private final List<AutoCloseable> opened = new ArrayList<>();
    private final Path home = ServerProcess.newHome();
    private LoopbackBroker broker;
    private ServerProcess one;
    private ServerProcess other;
    private LoopbackProxy proxy;
    private MeasuredClass room;
    private Browser teacher;

    ManyServersIT() throws IOException {}

    @BeforeEach
    void start() throws Exception {
        var database = open(EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(
                        Path.of("target/database-programs").toAbsolutePath().toFile())
                .start());
        broker = open(new LoopbackBroker());
        one = server(database);
        other = server(database);
        proxy = open(new LoopbackProxy(List.of(one.port(), other.port())));
        one.ready();
        other.ready();
        var atOne = Browser.of(one);
        room = MeasuredClass.layOut(atOne, one.setupKey(), 2);
        teacher = Browser.at(proxy.baseUrl());
        MeasuredClass.signIn(teacher);
    }

    @AfterEach
    void end() throws Exception {
        for (int last = opened.size() - 1; last >= 0; last--) {
            opened.get(last).close();
        }
    }

    @Test
    void tellAsOneAndTakeOverFromEachOther() throws Exception {
        bringAReadingOfOneToTheWallAtTheOther();
        agreeOnPlacesAndNumbers();
        loseNothingWhenOneIsKilled();
        goOnWithoutTheBroker();
        assertThat(home).as("a home beside a database that the settings name").doesNotExist();
    }

    private void bringAReadingOfOneToTheWallAtTheOther() throws Exception {
        var wall = open(FollowingPage.at(other.port(), room.day));
        await().until(() -> wall.dials() == 1 && !wall.taken().isEmpty());
        var atOne = Browser.of(one);
        MeasuredClass.signIn(atOne);
        UUID cell = room.cells.get(0);
        MeasuredClass.put(atOne, "/api/readings/" + UUID.randomUUID(), room.dark(cell, "0 mV"));
        MeasuredClass.put(atOne, "/api/readings/" + UUID.randomUUID(), room.lit(cell, "400 mV", "900 uA"));
        await().atMost(Duration.ofSeconds(20))
                .until(() -> String.valueOf(last(wall).body()).contains("standing=counts"));
        assertGrowing(wall.taken());
    }

    private void agreeOnPlacesAndNumbers() throws Exception {
        assertThat(room.leaderboard(Browser.of(one))).isEqualTo(room.leaderboard(Browser.of(other)));
    }

    private void loseNothingWhenOneIsKilled() throws Exception {
        var pages =
                List.of(open(FollowingPage.at(proxy.port(), room.day)), open(FollowingPage.at(proxy.port(), room.day)));
        await().until(() -> pages.stream().allMatch(page -> page.dials() == 1));
        var acknowledged = new CopyOnWriteArrayList<UUID>();
        var phones = new ArrayList<CompletableFuture<Void>>();
        for (int phone = 0; phone < PHONES; phone++) {
            phones.add(CompletableFuture.runAsync(() -> send(acknowledged)));
        }
        await().atMost(Duration.ofMinutes(1)).until(() -> acknowledged.size() > PHONES * READINGS_EACH / 3);
        one.kill();
        phones.forEach(CompletableFuture::join);

        assertThat(room.stored(teacher)).doesNotHaveDuplicates().containsAll(acknowledged);
        assertThat(acknowledged).hasSize(PHONES * READINGS_EACH);
        JsonNode snapshot = room.leaderboard(teacher);
        for (FollowingPage page : pages) {
            await().atMost(Duration.ofSeconds(30))
                    .until(() -> last(page).seq() == snapshot.get("seq").asLong());
            assertGrowing(page.taken());
        }
        assertThat(pages).anySatisfy(page -> assertThat(page.dials()).isGreaterThan(1));
    }

    private void goOnWithoutTheBroker() throws Exception {
        long before = room.leaderboard(teacher).get("seq").asLong();
        broker.close();

        new Outbox(teacher).deliver(room.lit(room.cells.get(0), "450 mV", "950 uA"));

        assertThat(room.leaderboard(teacher).get("seq").asLong()).isGreaterThan(before);
    }

    private void send(List<UUID> acknowledged) {
        var outbox = new Outbox(teacher);
        for (int reading = 0; reading < READINGS_EACH; reading++) {
            UUID cell = room.cells.get(reading % room.cells.size());
            acknowledged.add(outbox.deliver(room.lit(cell, (300 + reading) + " mV", "900 uA")));
        }
    }

    private ServerProcess server(EmbeddedPostgres database) throws IOException {
        return open(ServerProcess.start(
                home,
                "--spring.datasource.url=" + database.getJdbcUrl("postgres", "postgres"),
                "--spring.datasource.username=postgres",
                "--berrywatt.broker.host=127.0.0.1",
                "--berrywatt.broker.port=" + broker.port()));
    }

    private <T extends AutoCloseable> T open(T part) {
        opened.add(part);
        return part;
    }

    private static LiveMessage last(FollowingPage page) {
        return page.taken().get(page.taken().size() - 1);
    }

    /** One epoch, and numbers that only grow. */
    private static void assertGrowing(List<LiveMessage> messages) {
        assertThat(messages)
                .extracting(LiveMessage::epoch)
                .containsOnly(messages.get(0).epoch());
        assertThat(messages).extracting(LiveMessage::seq).isSorted().doesNotHaveDuplicates();
    }
}
