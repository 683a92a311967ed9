package org.berrywatt.leaderboard;

import java.util.List;
import java.util.UUID;
import org.berrywatt.curve.SweepFigures;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.normalise.CellMeasurement;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.normalise.LoadSweep;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.Reference;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.SpotReading;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;

/** Readings for tests: cells of 2 cm² known to 5 %, in 100 W/m² of sunlight, which is the reference. */
final class Readings {
    static final Deviates DEVIATES = new Deviates(7, 10_000);
    static final double AREA_UNCERTAINTY = 0.05;
    static final double LIGHT_UNCERTAINTY = 0.01;
    private static final double AREA_M2 = 2e-4;

    private Readings() {}

    /** A cell with nothing beside it. */
    static MeasuredCell alone(EvaluatedReading reading) {
        return beside(reading, null, null);
    }

    static MeasuredCell beside(
            EvaluatedReading reading, MeasuredCell.@Nullable Control control, MeasuredCell.@Nullable Settled settled) {
        return new MeasuredCell(reading, "yard", "yard", control, settled);
    }

    /** 0.4 V and a fill factor of 0.5 from a load sweep. */
    static EvaluatedReading swept(String cell, double currentA) {
        return swept(cell, currentA, LIGHT_UNCERTAINTY);
    }

    static EvaluatedReading swept(String cell, double currentA, double lightUncertainty) {
        var power = currentA * 0.4 * 0.5;
        var figures = new SweepFigures(
                new Estimate(currentA, 0.01 * currentA),
                new Estimate(0.4, 0.004),
                new Estimate(power, 0.02 * power),
                new Estimate(0.5, 0.01),
                0.2 * currentA / 0.4,
                true,
                null);
        return reading(cell, new LoadSweep(figures, List.of()), lightUncertainty);
    }

    /** 0.4 V and a current as a meter of 1 % shows them. */
    static EvaluatedReading spot(String cell, double currentA) {
        return reading(
                cell, new SpotReading(shown(currentA), shown(0.4), 0, Double.POSITIVE_INFINITY), LIGHT_UNCERTAINTY);
    }

    private static Shown shown(double value) {
        return new Shown(value, 0.01 * value, 0.001 * value);
    }

    private static EvaluatedReading reading(String cell, UnderLight underLight, double lightUncertainty) {
        var light = EffectiveIrradiance.of(
                Lamp.SUN,
                Instrument.SOLAR_METER,
                DyeFamily.ANTHOCYANIN,
                new Estimate(100, 100 * lightUncertainty),
                false);
        var measurement = new CellMeasurement(
                underLight,
                null,
                new Estimate(AREA_M2, AREA_UNCERTAINTY * AREA_M2),
                new LightAtCell(light, "yard", false, 0),
                "meter 1",
                null);
        UUID id = Teams.id(cell);
        return EvaluatedReading.of(id, Normalisation.of(measurement, new Reference(100, AREA_M2)), DEVIATES);
    }
}
