package org.berrywatt.server.leaderboard;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.light.Ultraviolet;
import org.berrywatt.normalise.CellMeasurement;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.reading.Classification;
import org.berrywatt.reading.Covered;
import org.berrywatt.reading.DarkThresholds;
import org.berrywatt.reading.SolarCheck;
import org.berrywatt.reading.SolarCheck.Lit;
import org.berrywatt.reading.Terminals;
import org.berrywatt.server.cell.CellArea;
import org.berrywatt.server.reading.RecordedReading;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/**
 * A cell of which everything is known that a result needs, in the terms of the science.
 *
 * @param meter names the multimeter: each team has its own
 * @param toggles where the shutter was used
 */
record ReadCell(
        String meter,
        CellArea area,
        RecordedReading dark,
        RecordedReading underLight,
        LightAtCell light,
        Optional<RecordedReading> toggles) {

    /**
     * Tells whether it is a solar cell.
     *
     * @param earlier what was read of it under light before
     * @throws org.berrywatt.curve.SweepRefused when the load sweep has no figures
     */
    Classification classification(List<Lit> earlier, Ultraviolet ultraviolet) {
        Lit latest = new Lit(terminals(Meter.underLight(underLight)), ultraviolet);
        return SolarCheck.classify(
                covered(),
                Stream.concat(earlier.stream(), Stream.of(latest)).toList(),
                toggles.map(Meter::toggles).orElse(null),
                DarkThresholds.usual());
    }

    Covered covered() {
        return Meter.covered(dark);
    }

    /** Current in the dark as shown, the meter's zero in it as in the lit reading; 0 where it was not read. */
    Estimate darkA() {
        return Objects.requireNonNullElse(Meter.terminals(dark).currentA(), Estimate.exact(0));
    }

    CellMeasurement measurement() {
        return new CellMeasurement(
                Meter.underLight(underLight),
                darkCurrent(),
                new Estimate(area.areaM2(), area.standardUncertaintyM2()),
                light,
                meter,
                null);
    }

    private @Nullable Shown darkCurrent() {
        return dark.current() == null ? null : Meter.shownCurrent(dark.current());
    }

    private Terminals terminals(UnderLight measured) {
        return measured instanceof LoadSweep sweep
                ? new Terminals(
                        sweep.figures().openCircuitVoltageV(), sweep.figures().shortCircuitCurrentA())
                : Meter.terminals(underLight);
    }
}
