package org.berrywatt.normalise;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a reader of a result should know, in order of weight. */
final class Notes {
    private static final double NOTED_RATIO = 1.3;
    private static final double FLAGGED_RATIO = 3;
    private static final double NOTED_BURDEN = 0.05;

    private Notes() {}

    static List<Note> of(CellMeasurement cell, Model model) {
        var ratio = model.value(model.ratio());
        return Stream.of(scaled(ratio), stale(cell), sweep(cell), burden(cell), dark(cell))
                .flatMap(notes -> notes)
                .toList();
    }

    private static Stream<Note> scaled(double ratio) {
        var factor = Math.max(ratio, 1 / ratio);
        var values = Map.of("factor", factor);
        return factor > FLAGGED_RATIO
                ? Stream.of(new Note("note.scaledFar", values))
                : when(factor > NOTED_RATIO, new Note("note.scaled", values));
    }

    private static Stream<Note> stale(CellMeasurement cell) {
        return when(cell.light().stale(), new Note("note.stationStale", Map.of()));
    }

    private static Stream<Note> sweep(CellMeasurement cell) {
        return cell.underLight() instanceof LoadSweep sweep
                ? when(!sweep.figures().peakBracketed(), new Note("note.peakNotBracketed", Map.of()))
                : Stream.of(new Note("note.noSweep", Map.of()));
    }

    private static Stream<Note> burden(CellMeasurement cell) {
        if (!(cell.underLight() instanceof SpotReading spot)) {
            return Stream.empty();
        }
        var percent = 100 * Burden.of(spot).share();
        return when(percent > 100 * NOTED_BURDEN, new Note("note.burden", Map.of("percent", percent)));
    }

    private static Stream<Note> dark(CellMeasurement cell) {
        var dark = cell.darkCurrentA();
        return dark == null
                ? Stream.of(new Note("note.darkNotRead", Map.of()))
                : when(dark.value() != 0, new Note("note.darkSubtracted", Map.of("currentMicroA", dark.value() * 1e6)));
    }

    private static Stream<Note> when(boolean applies, Note note) {
        return applies ? Stream.of(note) : Stream.empty();
    }
}
