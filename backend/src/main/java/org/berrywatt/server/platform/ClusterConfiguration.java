package org.berrywatt.server.platform;

import java.io.IOException;
import java.sql.SQLException;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Brings the server's own database up, unless {@code spring.datasource.url} names another one. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(BerrywattSettings.class)
class ClusterConfiguration {

    @Configuration(proxyBeanMethods = false)
    @ConditionalOnProperty(name = "spring.datasource.url", matchIfMissing = true, havingValue = "embedded")
    static class Embedded {

        @Bean(destroyMethod = "close")
        Cluster cluster(BerrywattSettings settings) throws IOException, SQLException {
            return Cluster.start(settings);
        }

        @Bean
        JdbcConnectionDetails connectionDetails(Cluster cluster) {
            return new ClusterConnection(cluster);
        }
    }
}
