package org.berrywatt.server.live;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.messaging.Message;
import org.springframework.messaging.MessageChannel;
import org.springframework.messaging.MessageDeliveryException;
import org.springframework.messaging.simp.SimpMessageHeaderAccessor;
import org.springframework.messaging.simp.SimpMessageType;
import org.springframework.messaging.support.ChannelInterceptor;

/**
 * Lets a client connect and listen to a lab day's feeds, and nothing else: what it sends, or where else it listens, is refused
 * with an ERROR frame and the end of the session.
 *
 * <p>Since nothing can be written through the socket, a connection needs no token against forged requests; the handshake's
 * check of the origin keeps other sites' pages out.
 */
final class ListeningOnly implements ChannelInterceptor {

    static final String REFUSAL = "This socket only brings news; it takes nothing.";

    private static final Set<SimpMessageType> HARMLESS = Set.of(
            SimpMessageType.CONNECT,
            SimpMessageType.HEARTBEAT,
            SimpMessageType.UNSUBSCRIBE,
            SimpMessageType.DISCONNECT);

    @Override
    public Message<?> preSend(Message<?> message, MessageChannel channel) {
        if (!isAllowed(message)) {
            throw new MessageDeliveryException(message, REFUSAL);
        }
        return message;
    }

    private static boolean isAllowed(Message<?> message) {
        SimpMessageType type = SimpMessageHeaderAccessor.getMessageType(message.getHeaders());
        return type == SimpMessageType.SUBSCRIBE ? isFeed(destination(message)) : HARMLESS.contains(type);
    }

    private static @Nullable String destination(Message<?> message) {
        return SimpMessageHeaderAccessor.getDestination(message.getHeaders());
    }

    private static boolean isFeed(@Nullable String destination) {
        return destination != null && LabDayTopic.isOne(destination);
    }
}
