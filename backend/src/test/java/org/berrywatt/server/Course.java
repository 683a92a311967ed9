package org.berrywatt.server;

import static org.berrywatt.server.OneSchool.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.berrywatt.statistics.Quantiles;

/** How a server's samples went over the quarters of a run: the last quarter is held against the second, when all is warm. */
final class Course {

    private static final double MOST_GROWTH = 0.05;
    private static final int MOST_MORE = 2;
    private static final int SECOND = 1;
    private static final int LAST = 3;
    private final Map<Integer, List<ProcessSample>> quarters = new HashMap<>();

    void add(int quarter, ProcessSample sample) {
        quarters.computeIfAbsent(quarter, empty -> new ArrayList<>()).add(sample);
    }

    void print() {
        line("live objects, MB", sample -> sample.live() / 100_000, 10);
        line("resident, MB", sample -> sample.resident() / 1_000_000, 1);
        line("threads", ProcessSample::threads, 1);
        line("open files and sockets", ProcessSample::files, 1);
        line("connections to the database", ProcessSample::connections, 1);
        say("more objects of ours in the last quarter than in the second: %s", grown());
    }

    private void line(String what, ToLongFunction<ProcessSample> of, double unit) {
        say(
                "%-28s by quarter: %s; slope %.2f a quarter",
                what,
                quarters.keySet().stream()
                        .sorted()
                        .map(quarter -> median(quarter, of) / unit)
                        .toList(),
                (median(LAST, of) - median(SECOND, of)) / unit / (LAST - SECOND));
    }

    List<String> rows(int minutes) {
        var against = "last quarter over the second of %d minutes, medians of 15".formatted(minutes);
        double live = median(LAST, ProcessSample::live) / median(SECOND, ProcessSample::live);
        return List.of(
                Promise.row(
                        "live objects of a server at ten times a class's pace",
                        against,
                        "≤ 1.05",
                        String.format(
                                Locale.ROOT,
                                "%.3f (%.1f MB, %.1f MB)",
                                live,
                                median(LAST, ProcessSample::live) / 1e6,
                                median(SECOND, ProcessSample::live) / 1e6),
                        live <= 1 + MOST_GROWTH),
                more("threads of the server", against, ProcessSample::threads),
                more("open files and sockets of the server", against, ProcessSample::files),
                more("connections to the database", against, ProcessSample::connections));
    }

    private String more(String what, String against, ToLongFunction<ProcessSample> of) {
        double last = median(LAST, of);
        double second = median(SECOND, of);
        return Promise.row(
                what,
                against,
                "≤ " + MOST_MORE + " more",
                String.format(Locale.ROOT, "%.0f, %.0f", last, second),
                last <= second + MOST_MORE);
    }

    private double median(int quarter, ToLongFunction<ProcessSample> of) {
        return Quantiles.median(
                        samples(quarter).stream().mapToLong(of).asDoubleStream().toArray())
                .orElseThrow();
    }

    /** The classes with the greatest growth, ten at most; a map that forgets nothing shows here. */
    private List<String> grown() {
        var before = atTheEndOf(SECOND);
        var growth = new HashMap<String, Long>();
        atTheEndOf(LAST).forEach((name, after) -> growth.put(name, after - before.getOrDefault(name, 0L)));
        return growth.entrySet().stream()
                .filter(grown -> grown.getValue() > 0)
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .limit(10)
                .map(grown -> grown.getKey() + " +" + grown.getValue())
                .toList();
    }

    private Map<String, Long> atTheEndOf(int quarter) {
        var samples = samples(quarter);
        return samples.get(samples.size() - 1).objects();
    }

    private List<ProcessSample> samples(int quarter) {
        return quarters.getOrDefault(quarter, List.of());
    }
}
