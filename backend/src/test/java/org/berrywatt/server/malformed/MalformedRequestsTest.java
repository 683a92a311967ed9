package org.berrywatt.server.malformed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.function.IntFunction;
import org.berrywatt.server.Bench;
import org.berrywatt.server.Promise;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Teachers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Whatever is sent, the server refuses it in its own words and tells nothing of its insides. Every check tries a share;
 * {@code deploy/malformed.sh} tries all.
 */
@ServerTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MalformedRequestsTest {

    private static final long SEED = 20_261_126;
    private static final int REQUESTS = Integer.getInteger("malformed.requests", 900);
    private static final int FRAMES = Integer.getInteger("malformed.frames", 100);

    private final JsonNode description;
    private final RawDoor door;
    private final Visitors visitors;

    @Autowired
    MalformedRequestsTest(MockMvcTester server, JsonMapper json, Teachers teachers, @LocalServerPort int port)
            throws Exception {
        description = json.readTree(
                server.get().uri("/v3/api-docs").exchange().getResponse().getContentAsByteArray());
        door = new RawDoor(port);
        visitors = Visitors.of(door, new Bench(server, json), teachers);
    }

    @Test
    void refusesMalformedRequestsInItsOwnWords() throws IOException {
        var requests = new Requests(description, visitors.known(), SEED);
        assertThat(tried("requests", REQUESTS, i -> requests.next(visitors.pass(i)))
                        .faults())
                .isEmpty();
    }

    @Test
    void refusesMalformedFramesInItsOwnWords() throws IOException {
        var frames = new Frames(visitors.day(), SEED);
        assertThat(tried("frames on the live socket", FRAMES, i -> frames.next())
                        .faults())
                .isEmpty();
    }

    private Tally tried(String what, int amount, IntFunction<byte[]> next) throws IOException {
        var tally = new Tally(what);
        for (var i = 0; i < amount; i++) {
            var sent = next.apply(i);
            tally.add(sent, door.send("127.1." + i / 250 % 250 + "." + (1 + i % 250), sent));
        }
        Promise.keep("malformed-" + what.replaceAll(" .*", ""), List.of(tally.row()));
        System.out.println(tally);
        return tally;
    }
}
