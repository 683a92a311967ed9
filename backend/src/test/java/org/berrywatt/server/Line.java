package org.berrywatt.server;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.List;
import java.util.concurrent.CompletionStage;
import org.jspecify.annotations.Nullable;

/** A page's socket that follows topics as the pages do, and ends as phones do: with good-bye, without, or by falling silent. */
@SuppressWarnings("FutureReturnValueIgnored") // nobody waits for a good-bye
final class Line {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private final WebSocket socket;

    private Line(WebSocket socket) {
        this.socket = socket;
    }

    /**
     * Connects and subscribes.
     *
     * @param heard runs with each message of a topic, not with heartbeats
     */
    static Line open(int port, List<String> topics, Runnable heard) {
        var socket = CLIENT.newWebSocketBuilder()
                .subprotocols("v12.stomp")
                .buildAsync(URI.create("ws://localhost:" + port + "/live"), new Ear(heard))
                .join();
        var line = new Line(socket);
        line.say("CONNECT\naccept-version:1.2\nhost:localhost\nheart-beat:10000,10000\n\n\0");
        for (int topic = 0; topic < topics.size(); topic++) {
            line.say("SUBSCRIBE\nid:" + topic + "\ndestination:" + topics.get(topic) + "\n\n\0");
        }
        return line;
    }

    private void say(String frame) {
        if (!socket.isOutputClosed()) {
            socket.sendText(frame, true).exceptionally(lost -> socket).join();
        }
    }

    /** That the phone is still there; whoever stops this is let go by the server. */
    void beat() {
        say("\n");
    }

    /** The page was left. */
    void sayGoodBye() {
        say("DISCONNECT\n\n\0");
        socket.sendClose(WebSocket.NORMAL_CLOSURE, "").exceptionally(lost -> socket);
    }

    /** The connection broke. */
    void tear() {
        socket.abort();
    }

    boolean isOver() {
        return socket.isInputClosed();
    }

    private record Ear(Runnable heard) implements WebSocket.Listener {

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence text, boolean last) {
            if (last && text.length() > 1) {
                heard.run();
            }
            socket.request(1);
            return null;
        }
    }
}
