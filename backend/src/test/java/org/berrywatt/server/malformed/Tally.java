package org.berrywatt.server.malformed;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.berrywatt.server.Promise;

/** What came back for many requests: how often each status, the slowest answer, and what should not have come. */
final class Tally {

    private static final int SHOWN = 600;

    private final String what;
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();
    private long worstNanos;
    private String slowest = "";

    Tally(String what) {
        this.what = what;
    }

    void add(byte[] sent, Answer answer) {
        statuses.merge(answer.status(), 1, Integer::sum);
        if (answer.nanos() > worstNanos) {
            worstNanos = answer.nanos();
            slowest = new String(sent, UTF_8).lines().findFirst().orElse("");
        }
        var insides = answer.insides().toList();
        if (answer.status() >= 500 || !insides.isEmpty()) {
            faults.add(excerpt(new String(sent, UTF_8)) + "\n --> " + answer.status() + " " + insides);
        }
    }

    List<String> faults() {
        return List.copyOf(faults);
    }

    /** A row of docs/validation.md. */
    String row() {
        return Promise.row(
                "malformed " + what + " answered with 5xx or with words of the server's insides",
                tried() + " from a fixed seed; slowest answer " + worstNanos / 1_000_000 + " ms",
                "0",
                String.valueOf(faults.size()),
                faults.isEmpty());
    }

    @Override
    public String toString() {
        return tried() + " malformed " + what + ": by status " + statuses + ", slowest " + worstNanos / 1_000_000
                + " ms for " + slowest + ", " + faults.size() + " faults";
    }

    private int tried() {
        return statuses.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static String excerpt(String text) {
        return text.substring(0, Math.min(SHOWN, text.length()));
    }
}
