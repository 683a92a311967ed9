package org.berrywatt.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.access.Passes;
import org.berrywatt.server.reading.Readings;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.mock.web.MockHttpServletRequest;

/** A class of phones behind a network that loses, delays, repeats and reorders what they send. */
@ServerTest
class WeakLinkTest {

    private static final int PHONES = 40;
    private static final int READINGS_EACH = Integer.getInteger("berrywatt.wifi.readings", 6);
    private static final long SEED = Long.getLong("berrywatt.wifi.seed", 5);

    @Autowired
    private ApplicationContext server;

    @Autowired
    private Passes passes;

    @Autowired
    private Readings readings;

    @LocalServerPort
    private int port;

    @Test
    void losesNothingAndStoresNothingTwice() throws Exception {
        var day = new Rehearsal(server);
        UUID team = day.team("Teal");
        List<UUID> cells = List.of(day.cell(team, "T1", null), day.cell(team, "T2", null));
        Queue<UUID> acknowledged = new ConcurrentLinkedQueue<>();
        var phones = Executors.newFixedThreadPool(PHONES);
        try (var link = new WeakLink(port, SEED)) {
            String pass = passes.issue(new Caller.TeamMember(team, day.labDayId), new MockHttpServletRequest())
                    .getValue();
            IntStream.range(0, PHONES)
                    .mapToObj(phone -> CompletableFuture.runAsync(
                            () -> send(Browser.holding(pass, link.address()), cells.get(phone % 2), acknowledged),
                            phones))
                    .toList()
                    .forEach(CompletableFuture::join);

            assertThat(link.faults()).as("requests that met bad luck").isGreaterThan(PHONES * READINGS_EACH / 2);
        } finally {
            phones.shutdownNow();
        }

        assertThat(acknowledged).hasSize(PHONES * READINGS_EACH);
        assertThat(stored(cells)).containsExactlyInAnyOrderElementsOf(acknowledged);
    }

    private static void send(Browser phone, UUID cell, Queue<UUID> acknowledged) {
        var outbox = new Outbox(phone);
        for (int reading = 0; reading < READINGS_EACH; reading++) {
            acknowledged.add(outbox.deliver("""
                    {"cellId": "%s", "kind": "dark", "voltage": {"text": "0 mV"}, "current": {"text": "0 uA"},
                     "unusualConfirmed": false, "noticedAt": "2026-05-05T10:00:00Z"}""".formatted(cell)));
        }
    }

    private List<UUID> stored(List<UUID> cells) {
        var ids = new ArrayList<UUID>();
        for (UUID cell : cells) {
            readings.list(cell, Rehearsal.TEACHER).stream()
                    .map(ReadingAnswer::id)
                    .forEach(ids::add);
        }
        return ids;
    }
}
