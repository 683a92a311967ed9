package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.berrywatt.light.Lamp;
import org.junit.jupiter.api.Test;

class NotesTest {
    @Test
    void notesScalingByMoreThanThirtyPercentAndFlagsMoreThanThreefold() {
        assertThat(noteKeys(Measured.sunlight(100 / 1.29))).doesNotContain("note.scaled", "note.scaledFar");
        assertThat(noteKeys(Measured.sunlight(100 / 1.31))).contains("note.scaled");
        assertThat(noteKeys(Measured.sunlight(131))).contains("note.scaled");
        assertThat(noteKeys(Measured.sunlight(100 / 2.9))).contains("note.scaled");
        assertThat(noteKeys(Measured.sunlight(100 / 3.1)))
                .contains("note.scaledFar")
                .doesNotContain("note.scaled");
    }

    @Test
    void notesAStationWhoseReadingIsOld() {
        assertThat(noteKeys(Measured.light(Lamp.SUN, 100, true))).contains("note.stationStale");
        assertThat(noteKeys(Measured.light(Lamp.SUN, 100, false))).doesNotContain("note.stationStale");
    }

    private static List<String> noteKeys(LightAtCell light) {
        return Normalisation.of(Measured.in(light), Measured.REFERENCE).notes().stream()
                .map(Note::key)
                .toList();
    }
}
