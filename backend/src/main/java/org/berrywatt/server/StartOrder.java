package org.berrywatt.server;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the command line asks for. {@code --demo} and {@code --demo=live} are words of our own; everything else is
 * Spring's.
 */
record StartOrder(String demo, List<String> arguments) {

    private static final String DEMO = "--demo";

    static StartOrder of(String... words) {
        var demo = Stream.of(words).filter(StartOrder::isDemo).reduce("off", (before, word) -> mode(word));
        return new StartOrder(
                demo, Stream.of(words).filter(word -> !isDemo(word)).toList());
    }

    /** The invented day has a home of its own, so that it never mixes with real data. */
    Map<String, Object> defaults() {
        var folder = demo.equals("off") ? ".berrywatt" : ".berrywatt-demo";
        return Map.of(
                "berrywatt.demo",
                demo,
                "berrywatt.home",
                Path.of(System.getProperty("user.home"), folder).toString());
    }

    private static boolean isDemo(String word) {
        return word.equals(DEMO) || word.startsWith(DEMO + "=");
    }

    private static String mode(String word) {
        return word.equals(DEMO) ? "on" : word.substring(DEMO.length() + 1);
    }
}
