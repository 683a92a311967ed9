package org.berrywatt.server.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.springframework.boot.context.event.ApplicationFailedEvent;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ApplicationListener;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.core.env.Environment;

/**
 * Brings the server's own database up, unless {@code spring.datasource.url} names another one: before the first bean,
 * so that both start side by side.
 */
class ClusterInitializer implements ApplicationContextInitializer<GenericApplicationContext> {

    @Override
    public void initialize(GenericApplicationContext context) {
        var settings = context.getEnvironment();
        if (settings.getProperty("spring.datasource.url") != null) {
            return;
        }
        var start = ClusterStart.in(home(settings));
        context.registerBean("cluster", ClusterStart.class, () -> start, bean -> bean.setDestroyMethodName("close"));
        context.registerBean(
                JdbcConnectionDetails.class, () -> new ClusterConnection(start), bean -> bean.setDependsOn("cluster"));
        context.addApplicationListener((ApplicationListener<ApplicationFailedEvent>) failed -> close(start));
    }

    private static Home home(Environment settings) {
        var programs = settings.getProperty("berrywatt.programs");
        var place = Path.of(settings.getRequiredProperty("berrywatt.home"));
        return Home.open(place, programs == null ? null : Path.of(programs));
    }

    private static void close(ClusterStart start) {
        try {
            start.close();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
