package org.berrywatt.calibration;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.berrywatt.validation.Row;

/** How often stated intervals and chances are right on simulated days. */
public final class CalibrationRows {
    private static final double[] CHANCES = {0.5, 0.6, 0.7, 0.8, 0.9, 1.01};
    private static final double CHANCE_WITHIN = 0.08;

    private CalibrationRows() {}

    /** Rows of so many days. */
    public static List<Row> of(int days) {
        var calibration = Calibration.ofDays(days);
        return Stream.of(cells(calibration), farCells(days / 5), differences(calibration), places(calibration))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Row> cells(Calibration all) {
        return List.of(
                covered("power of cells with a sweep", all.cells(ReadCell::swept), 0.93, 0.97),
                atStation("LED desk", StationKind.LED_DESK, all),
                atStation("halogen desk", StationKind.HALOGEN_DESK, all),
                atStation("window sill", StationKind.WINDOW_SILL, all),
                covered("power of cells without a sweep", all.cells(cell -> !cell.swept()), 0.93, 1));
    }

    /** Results of bounds: 95 % or more. */
    private static List<Row> farCells(int days) {
        return Stream.of(15.0, 1000.0)
                .flatMap(referenceWm2 -> {
                    var far = Calibration.ofDays(days, referenceWm2);
                    var brought = String.format(Locale.ROOT, ", brought from 60 to 200 W/m² to %.0f", referenceWm2);
                    return Stream.of(
                            covered("power of cells with a sweep" + brought, far.cells(ReadCell::swept), 0.93, 1),
                            covered(
                                    "power of cells without a sweep" + brought,
                                    far.cells(cell -> !cell.swept()),
                                    0.93,
                                    1));
                })
                .toList();
    }

    private static Row atStation(String name, StationKind kind, Calibration all) {
        Predicate<ReadCell> there = cell -> cell.swept() && cell.station().equals(kind.toString());
        return covered("power of these at the " + name, all.cells(there), 0.90, 0.99);
    }

    private static List<Row> differences(Calibration all) {
        return List.of(
                covered("difference of two swept cells of one station", all.differences(ReadCell::swept), 0.93, 0.99),
                Row.atMost(
                        "width of these, over that of cells which share nothing",
                        "1 if nothing were shared",
                        1,
                        all.sharpening(ReadCell::swept),
                        ""));
    }

    private static List<Row> places(Calibration all) {
        var chances = Stream.iterate(0, i -> i + 1)
                .limit(CHANCES.length - 1)
                .map(i -> all.chances(CHANCES[i], CHANCES[i + 1]))
                .map(CalibrationRows::chance);
        return Stream.concat(Stream.of(covered("place of a team", all.places(), 0.93, 1)), chances)
                .toList();
    }

    private static Row covered(String what, Share share, double low, double high) {
        return Row.between("95 % interval of the " + what, "n = " + share.of(), low, high, share.part(), "");
    }

    private static Row chance(List<StatedChance> chances) {
        var stated =
                chances.stream().mapToDouble(StatedChance::stated).average().orElse(Double.NaN);
        var came = Share.of(chances.stream().map(StatedChance::above)).part();
        return Row.between(
                String.format(Locale.ROOT, "chance to be above the next, stated as %.2f on average", stated),
                "n = " + chances.size(),
                stated - CHANCE_WITHIN,
                stated + CHANCE_WITHIN,
                came,
                "");
    }
}
