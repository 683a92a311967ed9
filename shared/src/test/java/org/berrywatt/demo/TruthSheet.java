package org.berrywatt.demo;

import java.util.List;
import java.util.Locale;

/** What was planted, cell by cell: for readers and checks, never loaded. */
final class TruthSheet {

    private static final double REFERENCE_WM2 = 50;

    private TruthSheet() {}

    static Sheet of(List<Life> lives) {
        List<String> columns = List.of(
                "label",
                "bake_temperature_degC",
                "dye",
                "tape_layers",
                "ended_at",
                "dark_current_at_filling_uA",
                "power_density_at_50_W_m2_uW_cm2");
        return new Sheet(
                "truth.csv", columns, lives.stream().map(TruthSheet::row).toList());
    }

    private static List<Object> row(Life life) {
        PlannedCell cell = life.cell();
        String endedAt = life.fate().stage();
        return List.of(
                cell.label(),
                cell.bakeC(),
                cell.dye(),
                cell.candleBench() ? 2 : 1,
                endedAt == null ? "" : endedAt,
                String.format(Locale.ROOT, "%.1f", Battery.of(cell).startA() * 1e6),
                String.format(Locale.ROOT, "%.3f", microwattPerCm2(cell)));
    }

    /** The dry cell's greatest power under the reference light, had it not broken. */
    static double microwattPerCm2(PlannedCell cell) {
        double powerW = Nature.cell(cell, REFERENCE_WM2, 0, 1).maximumPower().powerW();
        return powerW * 1e6 / cell.areaCm2();
    }
}
