package org.berrywatt.server;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the classroom server. */
@SpringBootApplication
public class Berrywatt {

    public static void main(String[] args) {
        SpringApplication.run(Berrywatt.class, args);
    }
}
