package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Estimate;

/** What a measurement must satisfy before anything is computed from it. */
final class Doors {
    private static final double LOWEST_IRRADIANCE_WM2 = 0.01;
    private static final double HIGHEST_IRRADIANCE_WM2 = 5000;
    /** Beyond this relative uncertainty a factor may as well be 0, and first order has nothing to say. */
    private static final double MOST_RELATIVE_UNCERTAINTY = 10;

    private Doors() {}

    static void check(CellMeasurement cell) {
        positive("area", cell.areaM2());
        light(cell.light().irradiance().effectiveWm2());
        if (cell.underLight() instanceof SpotReading spot) {
            shown("voltage", spot.voltageV());
            current(spot.currentA());
        }
    }

    static void photocurrent(double photocurrentA) {
        Limits.require(photocurrentA > 0, "photocurrent", photocurrentA, "(0, ∞)");
    }

    private static void light(Estimate effectiveWm2) {
        var value = effectiveWm2.value();
        Limits.require(
                value >= LOWEST_IRRADIANCE_WM2 && value <= HIGHEST_IRRADIANCE_WM2,
                "effectiveIrradiance",
                value,
                "[0.01, 5000]");
        positive("effectiveIrradiance", effectiveWm2);
    }

    /** A current below the resolution is a result of its own kind; one that the display shows must be of use. */
    private static void current(Shown currentA) {
        if (!currentA.isBelowResolution()) {
            shown("current", currentA);
        }
    }

    private static void shown(String quantity, Shown shown) {
        positive(quantity, new Estimate(shown.value(), shown.accuracyHalfWidth() + shown.resolution()));
    }

    private static void positive(String quantity, Estimate estimate) {
        Limits.require(estimate.value() > 0, quantity, estimate.value(), "(0, ∞)");
        var least = estimate.standardUncertainty() / MOST_RELATIVE_UNCERTAINTY;
        Limits.require(estimate.value() >= least, quantity, estimate.value(), "[" + least + ", ∞)");
    }
}
