package org.berrywatt.calibration;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.berrywatt.curve.Diode;
import org.berrywatt.curve.SweepRefused;
import org.berrywatt.leaderboard.Board;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Standing;
import org.berrywatt.leaderboard.Terms;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.normalise.CellMeasurement;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.normalise.Normalisation;
import org.berrywatt.normalise.Reference;
import org.berrywatt.normalise.UnderLight;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;

/**
 * A class day with a known truth: teams of three cells, three stations, one lux meter for all, a multimeter and a load box for
 * each team. One cell in eight breaks; two in five are read without a sweep.
 */
final class SimulatedDay {
    static final int CELLS_PER_TEAM = 3;

    private static final int TRIALS = 2_000;
    private static final double REFERENCE_AREA_M2 = 2e-4;

    private final int number;
    private final Reference reference;
    private final SplittableRandom random;
    private final SharedErrors errors;
    private final Deviates deviates;
    private final List<TrueStation> stations;

    private SimulatedDay(int number, double referenceWm2) {
        this.number = number;
        this.reference = new Reference(referenceWm2, REFERENCE_AREA_M2);
        this.random = new SplittableRandom(20_260_512L + number);
        this.errors = new SharedErrors(random.split());
        this.deviates = new Deviates(random.nextLong(), TRIALS);
        this.stations = Stream.of(StationKind.values())
                .map(kind -> TrueStation.of(kind, errors, random))
                .toList();
    }

    /**
     * The teams of a day, six to eight of them; equal numbers are equal days.
     *
     * @param referenceWm2 irradiance to which all is brought
     */
    static List<DayTeam> teams(int number, double referenceWm2) {
        var day = new SimulatedDay(number, referenceWm2);
        return IntStream.range(0, day.random.nextInt(6, 9)).mapToObj(day::team).toList();
    }

    static List<Standing> standings(List<DayTeam> teams) {
        var terms = new Terms(Rule.usual(), CELLS_PER_TEAM, false, TRIALS);
        return Board.of(teams.stream().map(DayTeam::teamCells).toList(), terms).standings();
    }

    private DayTeam team(int index) {
        var meter = new TeamMeter("meter " + index, errors);
        var dye = random.nextBoolean() ? DyeFamily.ANTHOCYANIN : DyeFamily.BETALAIN;
        var quality = Math.exp(0.3 * random.nextGaussian());
        var station = stations.get(index % stations.size());
        var failed = (int) IntStream.range(0, CELLS_PER_TEAM)
                .filter(i -> random.nextInt(8) == 0)
                .count();
        var cells = IntStream.range(failed, CELLS_PER_TEAM)
                .mapToObj(i -> new UUID(number, index * 100L + i))
                .map(id -> read(
                        id,
                        TrueCell.of(quality, dye, reference.irradianceWm2() / station.usualWm2(), random),
                        station,
                        meter))
                .toList();
        return new DayTeam(new UUID(number, index), cells, failed);
    }

    /** A sweep that the server would refuse is given up, as a class would. */
    private static Optional<UnderLight> swept(TeamMeter meter, Diode clipped) {
        try {
            return Optional.of(meter.sweep(clipped));
        } catch (SweepRefused refused) {
            return Optional.empty();
        }
    }

    private ReadCell read(UUID id, TrueCell cell, TrueStation station, TeamMeter meter) {
        var minute = random.nextInt(1, StationKind.MINUTES);
        var place = Math.exp(0.05 * random.nextGaussian());
        var contact = Math.exp(0.06 * random.nextGaussian());
        var warmth = 1 - 0.004 * random.nextDouble(-10, 10);
        var ratio = place * station.effectiveWm2(cell.dye(), minute) / reference.irradianceWm2();
        var clipped = cell.underLight(ratio, contact, warmth);
        var areaM2 = cell.areaM2() * Math.exp(0.05 * random.nextGaussian());
        var wanted = random.nextInt(5) > 1;
        var sweep = wanted ? swept(meter, clipped) : Optional.<UnderLight>empty();
        var swept = sweep.isPresent();
        var result = Normalisation.of(
                new CellMeasurement(
                        sweep.orElseGet(() -> meter.spot(clipped)),
                        meter.dark(clipped),
                        new Estimate(areaM2, 0.05 * areaM2),
                        station.known(cell.dye(), minute),
                        meter.name(),
                        null),
                reference);
        return new ReadCell(
                id,
                station.name(),
                swept,
                cell.powerDensityWm2(),
                result.powerDensityWm2().value(),
                result.trials(Measurand.POWER_DENSITY, deviates, id.toString()));
    }
}
