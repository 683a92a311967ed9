package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Type;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.berrywatt.contract.LiveMessage;
import org.jspecify.annotations.Nullable;
import org.springframework.messaging.converter.JacksonJsonMessageConverter;
import org.springframework.messaging.simp.stomp.StompCommand;
import org.springframework.messaging.simp.stomp.StompHeaders;
import org.springframework.messaging.simp.stomp.StompSession;
import org.springframework.messaging.simp.stomp.StompSessionHandlerAdapter;
import org.springframework.web.socket.WebSocketHttpHeaders;
import org.springframework.web.socket.client.standard.StandardWebSocketClient;
import org.springframework.web.socket.messaging.WebSocketStompClient;

/** A page that listens to the server: a STOMP client over a real socket. */
final class ListeningPage extends StompSessionHandlerAdapter implements AutoCloseable {

    private static final int PATIENCE_S = 20;

    private final BlockingQueue<LiveMessage> messages = new LinkedBlockingQueue<>();
    private final BlockingQueue<String> errors = new LinkedBlockingQueue<>();
    private final WebSocketStompClient client = new WebSocketStompClient(new StandardWebSocketClient());
    private final StompSession session;
    private volatile Consumer<LiveMessage> ear = messages::add;
    private volatile Runnable lost = () -> {};

    private ListeningPage(int port, WebSocketHttpHeaders handshake) throws Exception {
        client.setMessageConverter(new JacksonJsonMessageConverter());
        session = client.connectAsync("ws://localhost:" + port + "/live", handshake, this)
                .get(PATIENCE_S, TimeUnit.SECONDS);
    }

    static ListeningPage at(int port) throws Exception {
        return new ListeningPage(port, new WebSocketHttpHeaders());
    }

    static ListeningPage ofOrigin(String origin, int port) throws Exception {
        WebSocketHttpHeaders handshake = new WebSocketHttpHeaders();
        handshake.setOrigin(origin);
        return new ListeningPage(port, handshake);
    }

    ListeningPage listenTo(String destination) {
        session.subscribe(destination, this);
        return this;
    }

    /** Listens to the leaderboard of a day. */
    ListeningPage listenTo(UUID labDayId) {
        return listenTo(LabDayTopic.of(labDayId, "leaderboard"));
    }

    /** Hears messages as they come instead of keeping them for {@link #next}. */
    void whenHeard(Consumer<LiveMessage> listener) {
        ear = listener;
    }

    /** Also when it was lost already. */
    void whenLost(Runnable listener) {
        lost = listener;
        if (!errors.isEmpty()) {
            listener.run();
        }
    }

    void send(String destination) {
        session.send(destination, "{}");
    }

    boolean hasHeard() {
        return !messages.isEmpty();
    }

    LiveMessage next() throws InterruptedException {
        LiveMessage message = messages.poll(PATIENCE_S, TimeUnit.SECONDS);
        assertThat(message).as("a message within %d s", PATIENCE_S).isNotNull();
        return message;
    }

    /** The first message beyond a number. */
    LiveMessage nextAfter(long seq) throws InterruptedException {
        LiveMessage message = next();
        while (message.seq() <= seq) {
            message = next();
        }
        return message;
    }

    String nextError() throws InterruptedException {
        String error = errors.poll(PATIENCE_S, TimeUnit.SECONDS);
        assertThat(error).as("an ERROR frame within %d s", PATIENCE_S).isNotNull();
        return error;
    }

    @Override
    public Type getPayloadType(StompHeaders headers) {
        return LiveMessage.class;
    }

    @Override
    public void handleFrame(StompHeaders headers, @Nullable Object payload) {
        if (payload instanceof LiveMessage message) {
            ear.accept(message);
        } else {
            errors.add(String.valueOf(headers.getFirst("message")));
        }
    }

    @Override
    public void handleException(
            StompSession session,
            @Nullable StompCommand command,
            StompHeaders headers,
            byte[] payload,
            Throwable exception) {
        throw new IllegalStateException(exception);
    }

    @Override
    public void handleTransportError(StompSession session, Throwable exception) {
        errors.add(String.valueOf(exception.getMessage()));
        lost.run();
    }

    @Override
    public void close() {
        client.stop();
    }
}
