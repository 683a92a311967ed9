package org.berrywatt.demo;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * What a cell delivers in the dark: a fresh one is a battery until solvent and clips are dry, then it settles.
 *
 * @param startA current when the cell is filled
 * @param settlesMin minutes in which it falls to 1/e; infinite for a clip that stands in the electrolyte
 */
record Battery(double startA, double settlesMin) {

    private static final Battery HARDLY = new Battery(1.2e-6, 12);
    private static final double STRONG = 0.2;
    private static final double FOR_GOOD = 0.06;

    static Battery of(PlannedCell cell) {
        Draws draws = cell.draws("battery");
        double startA = draws.between(240, 340) * 1e-6;
        if (draws.happens(FOR_GOOD)) {
            return new Battery(startA, Double.POSITIVE_INFINITY);
        }
        return draws.happens(STRONG) ? new Battery(startA, draws.between(14, 18)) : HARDLY;
    }

    boolean matters() {
        return startA > 50e-6;
    }

    boolean neverSettles() {
        return Double.isInfinite(settlesMin);
    }

    double currentA(LocalDateTime filled, LocalDateTime at) {
        double minutes = Duration.between(filled, at).toSeconds() / 60.0;
        return startA * StrictMath.exp(-minutes / settlesMin);
    }
}
