package org.berrywatt.server.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.messaging.Message;
import org.springframework.messaging.MessageDeliveryException;
import org.springframework.messaging.simp.stomp.StompCommand;
import org.springframework.messaging.simp.stomp.StompHeaderAccessor;
import org.springframework.messaging.support.ExecutorSubscribableChannel;
import org.springframework.messaging.support.MessageBuilder;

class ListeningOnlyTest {

    private static final UUID DAY = UUID.fromString("5b0e9d0c-0000-4000-8000-000000000001");
    private static final String BOARD = LabDayTopic.of(DAY, "leaderboard");

    private final ExecutorSubscribableChannel channel = new ExecutorSubscribableChannel();
    private final ListeningOnly listeningOnly = new ListeningOnly();

    @ParameterizedTest
    @ValueSource(strings = {"leaderboard", "room"})
    void letsAClientListenToALabDay(String kind) {
        Message<?> subscribe = frame(StompCommand.SUBSCRIBE, LabDayTopic.of(DAY, kind));

        assertThat(listeningOnly.preSend(subscribe, channel)).isSameAs(subscribe);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/topic/*",
                "/topic/labday.*.leaderboard",
                "/topic/labday.*.room",
                "/topic/labday.5b0e9d0c-0000-4000-8000-000000000001.lesson",
                "/queue/x",
                "/user/queue/x",
                "/topic/labday.1.leaderboard"
            })
    void refusesToListenElsewhere(String destination) {
        assertRefused(frame(StompCommand.SUBSCRIBE, destination));
    }

    @Test
    void refusesToListenNowhere() {
        assertRefused(frame(StompCommand.SUBSCRIBE, null));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/topic/x", "/app/x"})
    void refusesToSend(String destination) {
        assertRefused(frame(StompCommand.SEND, destination));
    }

    @Test
    void refusesToSendToALeaderboard() {
        assertRefused(frame(StompCommand.SEND, BOARD));
    }

    @ParameterizedTest
    @EnumSource(
            names = {"CONNECT", "STOMP", "UNSUBSCRIBE", "DISCONNECT"},
            mode = Mode.INCLUDE)
    void letsAClientComeAndGo(StompCommand command) {
        Message<?> frame = frame(command, null);

        assertThat(listeningOnly.preSend(frame, channel)).isSameAs(frame);
    }

    private void assertRefused(Message<?> frame) {
        assertThatThrownBy(() -> listeningOnly.preSend(frame, channel))
                .isInstanceOf(MessageDeliveryException.class)
                .hasMessage("This socket only brings news; it takes nothing.");
    }

    private static Message<byte[]> frame(StompCommand command, @Nullable String destination) {
        StompHeaderAccessor headers = StompHeaderAccessor.create(command);
        if (destination != null) {
            headers.setDestination(destination);
        }
        return MessageBuilder.createMessage(new byte[0], headers.getMessageHeaders());
    }
}
