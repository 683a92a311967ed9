package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.stream.Stream;
import org.berrywatt.contract.LiveMessage;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.messaging.simp.SimpMessagingTemplate;
import org.springframework.web.socket.messaging.SubProtocolWebSocketHandler;

/** Phones that stopped reading, beside a page that did not. */
@ServerTest
class SlowListenersTest {

    private static final int STUCK = 30;
    private static final int MESSAGES = 300;
    private static final String FORTY_KILOBYTES = "x".repeat(40_000);

    @Autowired
    private SimpMessagingTemplate broker;

    @Autowired
    private SubProtocolWebSocketHandler sockets;

    @LocalServerPort
    private int port;

    private final String topic = LabDayTopic.of(UUID.randomUUID(), "leaderboard");

    @Test
    void doNotHoldUpTheOthersAndAreLetGoWhenTheyFallTooFarBehind() throws Exception {
        List<StuckPhone> stuck =
                Stream.generate(() -> StuckPhone.at(port, topic)).limit(STUCK).toList();
        try (ListeningPage page = ListeningPage.at(port).listenTo(topic)) {
            await().until(() -> echoed(page));
            for (int seq = 1; seq <= MESSAGES; seq++) {
                broker.convertAndSend(topic, new LiveMessage("e", seq, "leaderboard", FORTY_KILOBYTES));
                assertThat(page.nextAfter(seq - 1).seq()).isEqualTo(seq);
            }
            await().atMost(Duration.ofSeconds(40))
                    .until(() -> sockets.getStats().getLimitExceededSessions() >= STUCK);
        } finally {
            stuck.forEach(StuckPhone::close);
        }
    }

    /** Whether the subscription is known to the broker. */
    private boolean echoed(ListeningPage page) {
        broker.convertAndSend(topic, new LiveMessage("e", 0, "beat", null));
        return page.hasHeard();
    }

    /** Subscribes and never reads again. */
    private record StuckPhone(WebSocket socket) {

        static StuckPhone at(int port, String topic) {
            var connected = new CompletableFuture<Void>();
            var socket = HttpClient.newHttpClient()
                    .newWebSocketBuilder()
                    .subprotocols("v12.stomp")
                    .buildAsync(URI.create("ws://localhost:" + port + "/live"), new OneFrame(connected))
                    .join();
            socket.sendText("CONNECT\naccept-version:1.2\nhost:localhost\nheart-beat:0,0\n\n\0", true)
                    .join();
            connected.join();
            socket.sendText("SUBSCRIBE\nid:1\ndestination:" + topic + "\n\n\0", true)
                    .join();
            return new StuckPhone(socket);
        }

        void close() {
            socket.abort();
        }
    }

    /** Reads the CONNECTED frame alone. */
    private record OneFrame(CompletableFuture<Void> connected) implements WebSocket.Listener {

        @Override
        public void onOpen(WebSocket socket) {
            socket.request(1);
        }

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence text, boolean last) {
            connected.complete(null);
            return connected;
        }
    }
}
