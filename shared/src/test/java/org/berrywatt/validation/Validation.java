package org.berrywatt.validation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes docs/validation.md: agreement with published values and the ratios of the benchmarks. Started by
 * {@code deploy/validate.sh} with the report's path and that of the benchmarks' results.
 */
final class Validation {
    private Validation() {}

    public static void main(String[] paths) throws IOException {
        var sections = sections(Path.of(paths[1]));
        Files.write(Path.of(paths[0]), lines(sections));
        var missed = sections.stream().flatMap(it -> it.rows().stream()).filter(row -> !row.holds());
        missed.forEach(row -> System.out.println("not held: " + row));
    }

    private static List<Section> sections(Path benchmarks) {
        return List.of(
                new Section(
                        "Agreement with published values",
                        "Sources are named in the test resources. Digits are correct decimal digits, 15 at most.",
                        Accuracy.rows()),
                new Section(
                        "Speed",
                        "Ratios within one run, each from its least disturbed iteration; times depend on the machine.",
                        Ratios.read(benchmarks).rows()));
    }

    private static List<String> lines(List<Section> sections) {
        var lines = new ArrayList<String>();
        lines.addAll(List.of("# Validation", "", "Written by `sh deploy/validate.sh`, not by hand.", ""));
        lines.addAll(List.of("Run on " + LocalDate.now(ZoneId.systemDefault()) + ", " + machine() + ".", ""));
        sections.stream().map(Section::lines).forEach(lines::addAll);
        return lines;
    }

    private static String machine() {
        return Stream.of(
                        Runtime.getRuntime().availableProcessors() + " cores shared with other work",
                        System.getProperty("os.name") + " " + System.getProperty("os.arch"),
                        "Java " + System.getProperty("java.version"))
                .reduce((a, b) -> a + ", " + b)
                .orElseThrow();
    }
}
