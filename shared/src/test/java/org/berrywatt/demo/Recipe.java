package org.berrywatt.demo;

import java.util.List;
import java.util.stream.Stream;

/** The build sheet of a cell as its team filled it in; keys of the build catalogue. */
final class Recipe {

    private Recipe() {}

    static Stream<List<Object>> rows(PlannedCell cell) {
        Team team = cell.team();
        return Stream.concat(
                Stream.of(
                        row(cell, "oxideSource", team.oxide(), ""),
                        row(cell, "dyeSource", cell.dye(), ""),
                        row(cell, "bakeTemperature", String.valueOf(cell.bakeC()), "degC"),
                        row(cell, "bakeTime", "30", "min"),
                        row(cell, "substrate", "fto", ""),
                        row(cell, "pasteAcid", team.acid(), ""),
                        row(cell, "grindTime", String.valueOf(team.grindMin()), "min"),
                        row(cell, "tapeLayers", cell.candleBench() ? "2" : "1", "count"),
                        row(cell, "counterElectrode", cell.candleBench() ? "candleSoot" : "pencil", ""),
                        row(cell, "electrolyte", "iodideInGlycol", "")),
                soak(cell));
    }

    /** The Hedgehogs forgot to look at the clock. */
    private static Stream<List<Object>> soak(PlannedCell cell) {
        boolean unknown = cell.team().name().equals("Hedgehogs");
        return unknown ? Stream.empty() : Stream.of(row(cell, "soakTime", String.valueOf(cell.soakMin()), "min"));
    }

    private static List<Object> row(PlannedCell cell, String parameter, String text, String unit) {
        return List.of(cell.id(), parameter, text, unit);
    }
}
