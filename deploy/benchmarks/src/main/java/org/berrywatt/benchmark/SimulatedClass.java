package org.berrywatt.benchmark;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.Trials;
import org.berrywatt.leaderboard.Verification;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.light.Lamp;
import org.berrywatt.normalise.CellMeasurement;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.Reference;
import org.berrywatt.normalise.Shown;
import org.berrywatt.normalise.SpotReading;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;

/**
 * Two hundred cells of a day with 10,000 trials each, all under one lamp that was read with one lux meter.
 *
 * @param cellsPerTeam 5 makes 40 teams, 1 makes 200
 */
record SimulatedClass(int cellsPerTeam, Deviates deviates) {
    static final int CELLS = 200;
    static final int TRIALS = 10_000;

    private static final Reference REFERENCE = new Reference(100, 2e-4);
    private static final double READING_LX = 8_000;
    private static final double STEP_LX = 10;

    static SimulatedClass of(int cellsPerTeam) {
        return new SimulatedClass(cellsPerTeam, new Deviates(1, TRIALS));
    }

    List<TeamCells> teams() {
        return IntStream.range(0, CELLS / cellsPerTeam).mapToObj(this::team).toList();
    }

    private TeamCells team(int index) {
        return new TeamCells(
                new UUID(1, index),
                IntStream.range(0, cellsPerTeam)
                        .map(i -> index * cellsPerTeam + i)
                        .mapToObj(cell -> judged(cell, spot(cell)))
                        .toList());
    }

    /** A team after its first cell has been read anew. */
    TeamCells with(TeamCells team, CellEntry cell) {
        return new TeamCells(
                team.teamId(),
                Stream.concat(Stream.of(cell), team.cells().stream().skip(1)).toList());
    }

    /** Everything from the numbers on the meter to a result with its trials. */
    CellEntry judged(int cell, UnderLight underLight) {
        var id = new UUID(2, cell);
        var result = Normalisation.of(measurement(cell, underLight), REFERENCE);
        double[] trials = result.trials(Measurand.POWER_DENSITY, deviates, id.toString());
        return new CellEntry.Counts(
                id, result.powerDensityWm2().value(), Trials.of(trials), Verification.NOT_READ_AGAIN);
    }

    private static CellMeasurement measurement(int cell, UnderLight underLight) {
        var reading = new Estimate(READING_LX, STEP_LX / Math.sqrt(12));
        var light = EffectiveIrradiance.of(Lamp.COOL_LED, Instrument.LUX_METER, DyeFamily.ANTHOCYANIN, reading, true);
        return new CellMeasurement(
                underLight,
                new Shown(0, 2e-7, 1e-7),
                new Estimate(2e-4, 1e-5),
                new LightAtCell(light, "lamp desk", false),
                "meter " + cell % 10,
                null);
    }

    /** Currents from 50 to 249 µA, voltages around 0.4 V. */
    static SpotReading spot(int cell) {
        var currentA = (50 + cell) * 1e-6;
        var voltageV = 0.35 + 0.001 * (cell * 37 % 100);
        return new SpotReading(
                new Shown(currentA, 0.01 * currentA + 2e-7, 1e-7),
                new Shown(voltageV, 0.005 * voltageV + 2e-3, 1e-3),
                100,
                10e6);
    }
}
