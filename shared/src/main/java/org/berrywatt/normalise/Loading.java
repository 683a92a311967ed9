package org.berrywatt.normalise;

/**
 * What a meter takes from the cell that it reads. A current range needs a voltage I R, so that the point that was read lies at
 * V = I R instead of V = 0; a voltage range draws a current V / R, so that it lies at I = V / R instead of I = 0. The curve bends
 * downwards: the true figure lies between the reading (a curve square to the axis) and reading / (1 - share) (a straight one).
 *
 * @param share part of the cell's other figure that the meter takes, in [0, 0.9]
 */
record Loading(double share) {
    /** Nearer to the other axis the straight line says nothing any more. */
    private static final double MOST = 0.9;

    static final Loading NONE = new Loading(0);

    /** By a current range: I R over the open-circuit voltage. */
    static Loading ofCurrent(SpotReading spot) {
        return of(
                spot.currentA().likeliest() * spot.burdenOhm() / spot.voltageV().value());
    }

    /** By a voltage range: V / R over the short-circuit current. */
    static Loading ofVoltage(SpotReading spot) {
        return of(spot.voltageV().value()
                / spot.inputResistanceOhm()
                / spot.currentA().likeliest());
    }

    private static Loading of(double share) {
        return new Loading(Math.min(MOST, share));
    }

    double widestFactor() {
        return 1 / (1 - share);
    }

    double middleFactor() {
        return (1 + widestFactor()) / 2;
    }

    double halfWidth() {
        return (widestFactor() - 1) / 2;
    }
}
