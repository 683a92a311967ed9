package org.berrywatt.server.live;

import org.jspecify.annotations.Nullable;
import org.springframework.messaging.Message;
import org.springframework.messaging.MessageDeliveryException;
import org.springframework.web.socket.messaging.StompSubProtocolErrorHandler;

/** Says in words of our own what is wrong with a frame: those of the libraries tell of the server's insides. */
final class OddFrames extends StompSubProtocolErrorHandler {

    private static final String UNREADABLE = "This frame cannot be read.";

    @Override
    public @Nullable Message<byte[]> handleClientMessageProcessingError(
            @Nullable Message<byte[]> frame, Throwable cause) {
        var sentence = cause instanceof MessageDeliveryException ? ListeningOnly.REFUSAL : UNREADABLE;
        return super.handleClientMessageProcessingError(frame, new IllegalArgumentException(sentence));
    }
}
