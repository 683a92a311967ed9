package org.berrywatt.server.live;

import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.messaging.simp.config.ChannelRegistration;
import org.springframework.messaging.simp.config.MessageBrokerRegistry;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;
import org.springframework.web.socket.config.annotation.EnableWebSocketMessageBroker;
import org.springframework.web.socket.config.annotation.StompEndpointRegistry;
import org.springframework.web.socket.config.annotation.WebSocketMessageBrokerConfigurer;
import org.springframework.web.socket.config.annotation.WebSocketTransportRegistration;

/** The STOMP endpoint: {@code /live}, for pages of this server only, to listen only. */
@Configuration(proxyBeanMethods = false)
@EnableWebSocketMessageBroker
@EnableConfigurationProperties(ExternalBroker.class)
class LiveSocket implements WebSocketMessageBrokerConfigurer {

    private static final long[] HEARTBEATS_MS = {10_000, 10_000};
    private static final int LARGEST_CLIENT_FRAME_BYTES = 4 * 1024;
    private static final int SENDING_HANDS = 64;
    private static final int SEND_LIMIT_MS = 20_000;
    private static final int SEND_BUFFER_BYTES = 1024 * 1024;

    private final ThreadPoolTaskScheduler scheduler = new ThreadPoolTaskScheduler();
    private final ExternalBroker external;

    LiveSocket(ExternalBroker external) {
        this.external = external;
    }

    /** Runs heartbeats, beats and refreshes of the feeds; not a candidate for other features' schedules. */
    @Bean(defaultCandidate = false)
    @Qualifier("live")
    ThreadPoolTaskScheduler liveScheduler() {
        scheduler.setPoolSize(3);
        scheduler.setThreadNamePrefix("live-");
        return scheduler;
    }

    @Override
    public void registerStompEndpoints(StompEndpointRegistry registry) {
        registry.addEndpoint("/live");
        registry.setErrorHandler(new OddFrames());
    }

    @Override
    public void configureMessageBroker(MessageBrokerRegistry registry) {
        registry.setPreservePublishOrder(true);
        if (external.isNamed()) {
            external.relay(registry);
        } else {
            registry.enableSimpleBroker(LabDayTopic.ALL)
                    .setHeartbeatValue(HEARTBEATS_MS)
                    .setTaskScheduler(scheduler);
        }
    }

    @Override
    public void configureClientInboundChannel(ChannelRegistration registration) {
        registration.interceptors(new ListeningOnly());
    }

    /** A phone that stopped reading holds up one hand until its limits end it; the others need hands meanwhile. */
    @Override
    public void configureClientOutboundChannel(ChannelRegistration registration) {
        registration.taskExecutor().corePoolSize(SENDING_HANDS);
    }

    @Override
    public void configureWebSocketTransport(WebSocketTransportRegistration registration) {
        registration.setMessageSizeLimit(LARGEST_CLIENT_FRAME_BYTES);
        registration.setSendTimeLimit(SEND_LIMIT_MS).setSendBufferSizeLimit(SEND_BUFFER_BYTES);
    }
}
