package org.berrywatt.normalise;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.berrywatt.curve.Hysteresis;
import org.jspecify.annotations.Nullable;

/** What a reader of a result should know, in order of weight. */
final class Notes {
    private static final double NOTED_RATIO = 1.3;
    private static final double FLAGGED_RATIO = 3;
    private static final double NOTED_LOADING = 0.05;

    private Notes() {}

    static List<Note> of(CellMeasurement cell, Model model) {
        var ratio = model.value(model.ratio());
        return Stream.of(
                        scaled(ratio),
                        stale(cell),
                        sweep(cell, model.fitted(), ratio),
                        spot(cell.underLight()),
                        dark(cell))
                .flatMap(notes -> notes)
                .toList();
    }

    private static Stream<Note> scaled(double ratio) {
        var factor = factor(ratio);
        var values = Map.of("factor", factor);
        return factor > FLAGGED_RATIO
                ? Stream.of(new Note("note.scaledFar", values))
                : when(factor > NOTED_RATIO, new Note("note.scaled", values));
    }

    private static double factor(double ratio) {
        return Math.max(ratio, 1 / ratio);
    }

    private static Stream<Note> stale(CellMeasurement cell) {
        return when(cell.light().stale(), new Note("note.stationStale", Map.of()));
    }

    private static Stream<Note> sweep(CellMeasurement cell, boolean fitted, double ratio) {
        return cell.underLight() instanceof LoadSweep sweep
                ? Stream.of(
                                when(!sweep.figures().peakBracketed(), new Note("note.peakNotBracketed", Map.of())),
                                hysteresis(sweep.figures().hysteresis()),
                                when(!fitted && factor(ratio) > NOTED_RATIO, new Note("note.diodeNotFitted", Map.of())))
                        .flatMap(notes -> notes)
                : Stream.of(new Note("note.noSweep", Map.of()));
    }

    /** Says the power of both ways, so that a reader can report both. */
    private static Stream<Note> hysteresis(@Nullable Hysteresis found) {
        return found == null || !found.isNoted()
                ? Stream.empty()
                : Stream.of(new Note(
                        "note.hysteresis",
                        Map.of(
                                "percent", 100 * Math.abs(found.index()),
                                "towardsOpenMicroW", found.towardsOpenW() * 1e6,
                                "towardsShortMicroW", found.towardsShortW() * 1e6)));
    }

    private static Stream<Note> spot(UnderLight underLight) {
        return underLight instanceof SpotReading spot
                ? Stream.of(
                                loading("note.burden", Loading.ofCurrent(spot)),
                                loading("note.inputResistance", Loading.ofVoltage(spot)),
                                belowResolution(spot.currentA()))
                        .flatMap(notes -> notes)
                : Stream.empty();
    }

    private static Stream<Note> loading(String key, Loading loading) {
        return when(isNoted(loading), new Note(key, Map.of("percent", 100 * loading.share())));
    }

    static boolean isNoted(Loading loading) {
        return loading.share() > NOTED_LOADING;
    }

    private static Stream<Note> belowResolution(Shown current) {
        return when(
                current.isBelowResolution(),
                new Note("note.currentBelowResolution", Map.of("currentMicroA", current.censoredBelow() * 1e6)));
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
