package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The files about which cell lay on which plate: six cells each, one after the other put on and taken off. */
record HeaterSheets(List<Stay> stays) {

    private static final int HOLD_MIN = 45;

    /** Only a film that held is baked. */
    static HeaterSheets of(List<Life> lives) {
        return new HeaterSheets(lives.stream()
                .map(life -> life.cell().bakeC())
                .distinct()
                .sorted()
                .flatMap(bakeC -> onPlate(lives, bakeC))
                .toList());
    }

    private static Stream<Stay> onPlate(List<Life> lives, int bakeC) {
        List<Life> those = lives.stream()
                .filter(life -> life.cell().bakeC() == bakeC && !life.fate().endsAt("film"))
                .toList();
        return IntStream.range(0, those.size()).mapToObj(index -> new Stay(those.get(index), index + 1));
    }

    Sheet slots() {
        return new Sheet(
                "heater-slots.csv",
                List.of("id", "cell_id", "heater", "position", "target", "hold_minutes", "at"),
                stays.stream()
                        .sorted(Comparator.comparing(Stay::inAt))
                        .map(Stay::slot)
                        .toList());
    }

    Sheet outs() {
        return new Sheet(
                "heater-outs.csv",
                List.of("id", "slot_id", "cell_id", "at"),
                stays.stream()
                        .sorted(Comparator.comparing(Stay::outAt))
                        .map(Stay::out)
                        .toList());
    }

    private record Stay(Life life, int position) {

        private PlannedCell cell() {
            return life.cell();
        }

        LocalDateTime inAt() {
            return end("film").plusSeconds(110);
        }

        /** Looked at and written down as baked, or not, a minute later. */
        LocalDateTime outAt() {
            return end("bake").minusMinutes(1);
        }

        List<Object> slot() {
            return List.of(
                    id(),
                    cell().id(),
                    "Plate " + cell().bakeC(),
                    position,
                    cell().bakeC() + " °C",
                    HOLD_MIN,
                    When.of(inAt()));
        }

        List<Object> out() {
            return List.of(Scenario.id("heater out " + cell().label()), id(), cell().id(), When.of(outAt()));
        }

        private String id() {
            return Scenario.id("heater slot " + cell().label());
        }

        private LocalDateTime end(String stage) {
            return life.stages().stream()
                    .filter(end -> end.stage().equals(stage))
                    .findFirst()
                    .orElseThrow()
                    .at();
        }
    }
}
