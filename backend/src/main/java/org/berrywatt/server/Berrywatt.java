package org.berrywatt.server;

import org.berrywatt.server.platform.Errand;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the classroom server. */
@SpringBootApplication
public class Berrywatt {

    /** Ends with exit code 1 and one sentence on the error output when the server cannot start. */
    public static void main(String[] args) {
        var order = StartOrder.of(args);
        Errand.of(args, order.defaults()).ifPresent(errand -> System.exit(errand.run(System.out, System.err)));
        var application = new SpringApplication(Berrywatt.class);
        application.setDefaultProperties(order.defaults());
        try {
            application.run(order.arguments().toArray(String[]::new));
        } catch (RuntimeException reported) {
            System.exit(1);
        }
    }
}
