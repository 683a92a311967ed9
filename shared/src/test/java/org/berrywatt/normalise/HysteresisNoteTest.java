package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.junit.jupiter.api.Test;

class HysteresisNoteTest {

    @Test
    void saysThePowerOfBothWaysWhenTheyDifferByMoreThanFivePerCent() {
        // by hand: a line from 1 mA to 0.5 V gives 125 µW at most; nine tenths of it 112.5 µW
        var note = notes(0.9)
                .filter(it -> it.key().equals("note.hysteresis"))
                .findFirst()
                .orElseThrow();
        assertThat(note.values().get("towardsOpenMicroW")).isCloseTo(125, within(0.5));
        assertThat(note.values().get("towardsShortMicroW")).isCloseTo(112.5, within(0.5));
        assertThat(note.values().get("percent")).isCloseTo(100.0 / 9, within(1e-9));
    }

    @Test
    void saysNothingOfASmallDifference() {
        assertThat(notes(0.98)).extracting(Note::key).doesNotContain("note.hysteresis");
    }

    /** Notes on a cell that is swept to open circuit and back, delivering a part of the power on its way back. */
    private static Stream<Note> notes(double part) {
        var there =
                IntStream.rangeClosed(0, 10).mapToObj(i -> line(0.05 * i, 1)).toList();
        var back = IntStream.rangeClosed(0, 10)
                .mapToObj(i -> line(0.5 - 0.05 * i, part))
                .toList();
        var sweep = Sweep.of(
                Stream.of(there, back).flatMap(List<SweepPoint>::stream).toList());
        var cell = Measured.cell(LoadSweep.of(sweep), null, Measured.AREA, Measured.sunlight(100));
        return Normalisation.of(cell, Measured.REFERENCE).notes().stream();
    }

    private static SweepPoint line(double voltageV, double part) {
        return SweepPoint.exact(Math.sqrt(part) * voltageV, Math.sqrt(part) * (1e-3 - 2e-3 * voltageV));
    }
}
