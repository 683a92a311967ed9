package org.berrywatt.server.live;

import static java.util.Objects.requireNonNull;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.messaging.simp.config.MessageBrokerRegistry;

/**
 * A STOMP broker that carries the live messages between servers beside each other, prefix {@code berrywatt.broker}. Without a
 * host the server's own broker serves its own pages.
 *
 * @param virtualHost what the broker calls the part of it that is ours
 */
@ConfigurationProperties("berrywatt.broker")
record ExternalBroker(
        @Nullable String host,
        @DefaultValue("61613") int port,
        @DefaultValue("guest") String login,
        @DefaultValue("guest") String passcode,
        @DefaultValue("/") String virtualHost) {

    boolean isNamed() {
        return host != null;
    }

    /** Pages' sockets and the server's own messages all sign in as the server: pages have no account at the broker. */
    void relay(MessageBrokerRegistry registry) {
        registry.enableStompBrokerRelay(LabDayTopic.ALL)
                .setRelayHost(requireNonNull(host))
                .setRelayPort(port)
                .setVirtualHost(virtualHost)
                .setClientLogin(login)
                .setClientPasscode(passcode)
                .setSystemLogin(login)
                .setSystemPasscode(passcode);
    }
}
