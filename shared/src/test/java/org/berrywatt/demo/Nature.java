package org.berrywatt.demo;

import java.util.Map;
import org.berrywatt.curve.Diode;

/**
 * What the cells really are; planted, and documented in demo-data/README.md. Natural-dye cells of improvised materials give
 * some 0.5 mA/cm2 in full sun and 0.3 to 0.45 V in room light.
 */
final class Nature {

    private static final double SUN_WM2 = 1000;
    private static final double CURRENT_IN_SUN_A_CM2 = 0.55e-3;
    private static final double SATURATION_A_CM2 = 5e-9;
    private static final double SHUNT_OHM_CM2 = 130e3;
    private static final double SERIES_OHM_CM2 = 400;
    private static final double IDEALITY = 1.8;
    private static final double ROOM_C = 25;
    private static final double CELL_SPREAD = 0.10;
    private static final Map<Integer, Double> BAKE = Map.of(350, 0.30, 400, 0.55, 450, 1.0, 500, 1.25);
    private static final Map<String, Double> DYE = Map.of("elderberry", 1.45, "blackberry", 1.0, "onionSkin", 0.55);
    /** Two layers of tape make the thicker film; soot or pencil makes no difference at all. */
    private static final double TWO_LAYERS = 1.2;

    private Nature() {}

    /**
     * The cell under an effective irradiance, with what it still is as a battery.
     *
     * @param contact how well it was clipped and placed this time, about 1
     */
    static Diode cell(PlannedCell cell, double effectiveWm2, double batteryA, double contact) {
        double bake = BAKE.getOrDefault(cell.bakeC(), 1.0);
        double areaCm2 = cell.areaCm2();
        return new Diode(
                contact * quality(cell) * CURRENT_IN_SUN_A_CM2 * areaCm2 * effectiveWm2 / SUN_WM2 + batteryA,
                SATURATION_A_CM2 * areaCm2 * cell.draws("junction").factor(0.3),
                IDEALITY,
                SERIES_OHM_CM2 / areaCm2 * cell.draws("series").factor(0.2),
                SHUNT_OHM_CM2 / areaCm2 * Math.sqrt(bake) * cell.draws("shunt").factor(0.2),
                ROOM_C);
    }

    /** Photocurrent against that of a plain cell: bake, dye, film, hands and luck. */
    static double quality(PlannedCell cell) {
        return BAKE.getOrDefault(cell.bakeC(), 1.0)
                * DYE.getOrDefault(cell.dye(), 1.0)
                * (cell.candleBench() ? TWO_LAYERS : 1)
                * cell.team().skill()
                * cell.draws("luck").factor(CELL_SPREAD);
    }

    /** The same cell with its electrodes touching: what light frees runs back inside. */
    static Diode shorted(Diode cell) {
        return new Diode(
                cell.photocurrentA() / 1000,
                cell.saturationCurrentA(),
                cell.idealityFactor(),
                cell.seriesResistanceOhm(),
                15,
                cell.temperatureC());
    }
}
