package org.berrywatt.server.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

/**
 * A phone on a slow connection of our own choice: each answer 100 ms late, 2 Mbit/s towards the phone, 0.5 Mbit/s away from
 * it. What is held to limits is what the wait is made of, bytes and rounds; seconds would tell how busy this machine is.
 */
@ServerTest
class SlowConnectionTest {

    private static final Map<String, Object> PROFILE = Map.of(
            "offline", false, "latency", 100, "downloadThroughput", 2_000_000 / 8, "uploadThroughput", 500_000 / 8);
    private static final int FIRST_LIMIT_BYTES = 300_000;
    private static final int SECOND_LIMIT_BYTES = 30_000;
    private static final int FIRST_LIMIT_REQUESTS = 120;
    private static final int SECOND_LIMIT_REQUESTS = 20;

    /** Files, who is here, the day, its cells, and two to spare; the modules alone lie six levels deep. */
    private static final int LIMIT_ROUNDS = 6;

    private static final String FETCHED = """
            return window.shownMs && performance.getEntriesByType('resource')
              .filter(it => it.startTime < window.shownMs)
              .map(it => ({ name: it.name, startMs: it.startTime, endMs: it.responseEnd, bytes: it.transferSize }))""";

    /** Notes when the cell is there: what the page goes on to fetch nobody waits for. */
    private static final String NOTE_WHEN_SHOWN = """
            new MutationObserver((changes, observer) => {
              if (!document.querySelector('.slides a')) return;
              window.shownMs = performance.now();
              observer.disconnect();
            }).observe(document, { childList: true, subtree: true });""";

    private final Bench bench;
    private final TeamPhone phone;

    SlowConnectionTest(@Autowired MockMvcTester server, @Autowired JsonMapper json, @LocalServerPort int port) {
        bench = new Bench(server, json);
        phone = new TeamPhone(port);
    }

    @BeforeEach
    void joinAndGoFarAway() {
        phone.startTeam(bench.code(), "Snails").registerCell("S1");
        phone.device.driver().executeCdpCommand("Network.enable", Map.of());
        phone.device.driver().executeCdpCommand("Network.clearBrowserCache", Map.of());
        phone.device
                .driver()
                .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", NOTE_WHEN_SHOWN));
        phone.device.driver().executeCdpCommand("Network.emulateNetworkConditions", PROFILE);
    }

    @AfterEach
    void putAway() throws IOException {
        phone.close();
    }

    @Test
    void showsTheBenchInFewRoundsAndKeepsItsFilesForTheNextTime() {
        var first = openBench();
        assertThat(first).as("requests").hasSizeLessThan(FIRST_LIMIT_REQUESTS);
        assertThat(bytes(first)).isBetween(1L, (long) FIRST_LIMIT_BYTES);
        assertThat(rounds(first)).isBetween(1L, (long) LIMIT_ROUNDS);

        var second = openBench().stream().filter(it -> it.bytes > 0).toList();
        assertThat(second)
                .as("requests")
                .hasSizeLessThan(SECOND_LIMIT_REQUESTS)
                .noneMatch(it -> it.name.contains("/at/"));
        assertThat(bytes(second)).isBetween(1L, (long) SECOND_LIMIT_BYTES);
        assertThat(rounds(second)).isBetween(1L, (long) LIMIT_ROUNDS);
    }

    /** What the page fetched until a person sees the cell. */
    @SuppressWarnings("unchecked")
    private List<Fetched> openBench() {
        phone.device.open("about:blank").open(phone.wifi.address() + "/bench.html");
        var found = (List<Map<String, Object>>) phone.device.answers(FETCHED);
        return found.stream().map(Fetched::of).toList();
    }

    private static long bytes(List<Fetched> fetched) {
        return fetched.stream().mapToLong(Fetched::bytes).sum();
    }

    /** The most requests of which each began only when the one before had its answer. */
    private static long rounds(List<Fetched> fetched) {
        double freeMs = 0;
        long rounds = 0;
        for (var next : fetched.stream()
                .sorted(Comparator.comparingDouble(Fetched::endMs))
                .toList()) {
            if (next.startMs < freeMs) continue;
            freeMs = next.endMs;
            rounds++;
        }
        return rounds;
    }

    private record Fetched(String name, double startMs, double endMs, long bytes) {

        static Fetched of(Map<String, Object> entry) {
            return new Fetched(
                    String.valueOf(entry.get("name")),
                    number(entry.get("startMs")).doubleValue(),
                    number(entry.get("endMs")).doubleValue(),
                    number(entry.get("bytes")).longValue());
        }

        private static Number number(Object value) {
            return (Number) value;
        }
    }
}
