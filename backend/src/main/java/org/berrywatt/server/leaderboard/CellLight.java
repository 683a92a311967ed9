package org.berrywatt.server.leaderboard;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.StationLight;
import org.berrywatt.light.TimedReading;
import org.berrywatt.normalise.LightAtCell;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.light.LightReading;
import org.berrywatt.server.light.Station;

/** The light that a cell had at a station at an instant. */
final class CellLight {

    private CellLight() {}

    /**
     * Interpolates the station's readings and weighs them for the cell's dye. Where a station was read in lx and in W/m2,
     * the readings in the unit of the latest one tell its course. Empty when the station's light was never read.
     */
    static Optional<LightAtCell> of(Cell cell, Station station, Instant at) {
        List<LightReading> course = course(station);
        return course.isEmpty() ? Optional.empty() : Optional.of(of(cell, station, course, at));
    }

    /** The readings between which the light is taken at an instant, or the one that is held; in one unit, as above. */
    static List<LightReading> used(Station station, Instant at) {
        List<LightReading> course = course(station);
        Stream<LightReading> before =
                course.stream().filter(reading -> reading.at().isBefore(at)).reduce((earlier, later) -> later).stream();
        Stream<LightReading> after =
                course.stream().filter(reading -> !reading.at().isBefore(at)).limit(1);
        return Stream.concat(before, after).toList();
    }

    private static List<LightReading> course(Station station) {
        List<LightReading> lit = station.readings().stream()
                .filter(reading -> reading.valueSi() > 0)
                .toList();
        return lit.stream()
                .filter(reading -> reading.lux() == lit.get(lit.size() - 1).lux())
                .toList();
    }

    private static LightAtCell of(Cell cell, Station station, List<LightReading> course, Instant at) {
        boolean lux = course.get(0).lux();
        List<TimedReading> read = course.stream()
                .map(reading -> TimedReading.shown(reading.at(), reading.valueSi(), reading.resolutionSi()))
                .toList();
        StationLight light = StationLight.at(station.lamp(), read, at);
        return new LightAtCell(
                EffectiveIrradiance.of(station.source(), station.instrument(), dyeOf(cell), light.raw(), lux),
                station.id().toString(),
                light.stale(),
                station.placeUncertainty());
    }

    private static DyeFamily dyeOf(Cell cell) {
        return cell.entry("dyeSource")
                .map(RecipeEntry::text)
                .map(BuildCatalogue::dyeFamilyOf)
                .orElse(DyeFamily.OTHER);
    }
}
