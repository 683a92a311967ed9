package org.berrywatt.server.platform;

import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** The first thing to read after a start: where to go, and what to do there. */
@Component
class Greeting {

    private final Texts texts;
    private final Addresses addresses;
    private final List<ConsoleNote> notes;
    private final PrintStream console = System.out;

    Greeting(Texts texts, Addresses addresses, List<ConsoleNote> notes) {
        this.texts = texts;
        this.addresses = addresses;
        this.notes = notes;
    }

    @Order
    @EventListener(ApplicationReadyEvent.class)
    void print() {
        console.println();
        lines().forEach(console::println);
        console.println();
    }

    Stream<String> lines() {
        var places = Stream.concat(
                Stream.of(texts.say("console.ready"), "", line("console.here", addresses.local())),
                addresses.baseUrls().stream().map(url -> line("console.phones", url)));
        return Stream.concat(places, notes.stream().map(ConsoleNote::lines).flatMap(Greeting::paragraph));
    }

    private String line(String key, String address) {
        return "  " + texts.say(key, Map.of("address", address));
    }

    private static Stream<String> paragraph(List<String> lines) {
        return lines.isEmpty()
                ? Stream.empty()
                : Stream.concat(Stream.of(""), lines.stream().map(line -> "  " + line));
    }
}
