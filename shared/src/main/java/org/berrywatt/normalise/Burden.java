package org.berrywatt.normalise;

/**
 * The voltage that a current range takes from the cell. The point that was read lies at V = I R instead of V = 0; the
 * short-circuit current lies between the reading (a curve level near V = 0) and reading / (1 - I R / Voc) (a straight one).
 *
 * @param share part of the open-circuit voltage that the range takes, in [0, 0.9]
 */
record Burden(double share) {
    /** Nearer to open circuit the straight line says nothing any more. */
    private static final double MOST = 0.9;

    static Burden of(SpotReading spot) {
        var share = spot.currentA().value() * spot.burdenOhm() / spot.voltageV().value();
        return new Burden(Math.min(MOST, share));
    }

    double widestFactor() {
        return 1 / (1 - share);
    }
}
