package org.berrywatt.server;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Many phones and Walls that listen to one topic; tells when the last of them has heard a number. */
final class Listeners implements AutoCloseable {

    private static final Pattern SEQ = Pattern.compile("\"seq\":(-?\\d+)");
    private final List<WebSocket> sockets = new ArrayList<>();
    private volatile Awaited awaited = new Awaited(Long.MIN_VALUE, new CountDownLatch(0));

    private record Awaited(long seq, CountDownLatch latch) {}

    Listeners(int port, String topic, int count) throws InterruptedException {
        var client = HttpClient.newHttpClient();
        var connected = new CountDownLatch(count);
        for (int each = 0; each < count; each++) {
            var socket = client.newWebSocketBuilder()
                    .subprotocols("v12.stomp")
                    .buildAsync(URI.create("ws://localhost:" + port + "/live"), new Ear(connected))
                    .join();
            socket.sendText("CONNECT\naccept-version:1.2\nhost:localhost\nheart-beat:0,0\n\n\0", true)
                    .join();
            sockets.add(socket);
        }
        connected.await(1, TimeUnit.MINUTES);
        sockets.forEach(socket -> socket.sendText("SUBSCRIBE\nid:1\ndestination:" + topic + "\n\n\0", true)
                .join());
    }

    /** Counts from now on who hears this number. */
    void expect(long seq) {
        awaited = new Awaited(seq, new CountDownLatch(sockets.size()));
    }

    /** Waits until all have heard it. */
    boolean all(long seconds) throws InterruptedException {
        return awaited.latch().await(seconds, TimeUnit.SECONDS);
    }

    private final class Ear implements WebSocket.Listener {

        private final StringBuilder frame = new StringBuilder();
        private final CountDownLatch connected;

        Ear(CountDownLatch connected) {
            this.connected = connected;
        }

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence text, boolean last) {
            frame.append(text);
            if (last) {
                hear();
                frame.setLength(0);
            }
            socket.request(1);
            return null;
        }

        private void hear() {
            if (frame.indexOf("CONNECTED") == 0) {
                connected.countDown();
                return;
            }
            var seq = SEQ.matcher(frame);
            Awaited now = awaited;
            if (seq.find() && Long.parseLong(seq.group(1)) == now.seq()) {
                now.latch().countDown();
            }
        }
    }

    @Override
    public void close() {
        sockets.forEach(WebSocket::abort);
    }
}
