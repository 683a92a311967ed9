package org.berrywatt.validation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.berrywatt.calibration.CalibrationRows;
import org.berrywatt.findings.FindingsRows;

/**
 * Writes docs/promises/science.md: agreement with published values, how often intervals are right on simulated days, and the ratios
 * of the benchmarks. Started by {@code deploy/validate.sh} with the report's path, that of the benchmarks' results and the number
 * of days; findings take twice as many. Fails when a row does not hold that is not known to miss.
 */
final class Validation {
    private Validation() {}

    public static void main(String[] arguments) throws IOException {
        var sections = sections(Path.of(arguments[1]), Integer.parseInt(arguments[2]));
        Files.write(Path.of(arguments[0]), lines(sections));
        var broken = sections.stream().flatMap(Section::broken).toList();
        if (!broken.isEmpty()) {
            throw new IllegalStateException(broken.size() + " rows do not hold: " + broken);
        }
    }

    private static List<Section> sections(Path benchmarks, int days) {
        return List.of(
                new Section(
                        "Agreement with published values",
                        "Sources are named in the test resources. Digits are correct decimal digits, 15 at most.",
                        Accuracy.rows()),
                new Section(
                        "Calibration",
                        days + " simulated class days whose truth is known: what docs/science/normalisation.md and"
                                + " docs/science/leaderboard.md say of them.",
                        CalibrationRows.of(days)),
                new Section(
                        "Findings",
                        "Simulated class days whose truth is known: how often docs/science/findings.md is right.",
                        FindingsRows.of(2 * days)),
                new Section(
                        "Speed",
                        "Ratios within one run, each from its least disturbed iteration; times depend on the machine.",
                        Stream.concat(Ratios.read(benchmarks).rows().stream(), BoardMemory.rows().stream())
                                .toList()));
    }

    private static List<String> lines(List<Section> sections) {
        var lines = new ArrayList<String>();
        lines.addAll(List.of(
                "# Validation",
                "",
                "Put together by `sh deploy/promises.sh` from what each command last measured, not by hand.",
                ""));
        lines.addAll(List.of(
                "Science by `sh deploy/validate.sh` on " + LocalDate.now(ZoneId.systemDefault()) + ", " + machine()
                        + ".",
                ""));
        lines.addAll(List.of("What is promised of reliability and size, and what to do: `docs/reliability.md`.", ""));
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
