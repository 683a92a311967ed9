package org.berrywatt.server.platform;

import java.time.Clock;
import java.time.ZoneOffset;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one clock of the server, so that tests may hold it, and its texts. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(BerrywattSettings.class)
class PlatformConfiguration {

    @Bean
    Clock clock() {
        return Clock.tickMillis(ZoneOffset.UTC);
    }

    @Bean
    Texts texts() {
        return Texts.load();
    }
}
