package org.berrywatt.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Generates the whole demo day, and writes it when run: {@code sh deploy/demo-data.sh}. */
final class DemoDay {

    private DemoDay() {}

    static List<Sheet> sheets() {
        List<Life> lives = Plan.cells().stream().map(Life::of).toList();
        List<Visit> visits = Visit.ofAll(lives);
        BuildSheets build = new BuildSheets(lives, visits);
        ReadingSheets readings = ReadingSheets.of(Stream.concat(visits.stream(), ControlRounds.visits(lives).stream())
                .toList());
        return List.of(
                DaySheets.labDay(),
                DaySheets.teams(),
                DaySheets.stations(),
                DaySheets.irradiances(),
                ControlRounds.choice(lives),
                PlanSheets.plan(),
                PlanSheets.parts(),
                PlanSheets.changes(),
                PlanSheets.cells(),
                SafetySheets.signOffs(),
                SafetySheets.incidents(),
                build.cells(),
                build.recipe(),
                build.outcomes(),
                readings.readings(),
                readings.sweepPoints(),
                TruthSheet.of(lives));
    }

    /** Writes every file into the folder that the one argument names. */
    public static void main(String[] folder) throws IOException {
        for (Sheet sheet : sheets()) {
            Files.writeString(Path.of(folder[0], sheet.file()), sheet.text());
        }
    }
}
