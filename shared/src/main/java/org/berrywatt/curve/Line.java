package org.berrywatt.curve;

/**
 * A straight piece of a curve, current = atZeroV + slope · voltage, that never rises: noise that says otherwise is taken as
 * level.
 *
 * @param slopeS in (-∞, 0]
 */
record Line(double atZeroA, double slopeS) {

    static Line through(SweepPoint from, SweepPoint to) {
        var risesV = to.voltageV() - from.voltageV();
        var slopeS = risesV > 0 ? Math.min(0, (to.currentA() - from.currentA()) / risesV) : 0;
        return new Line(from.currentA() - slopeS * from.voltageV(), slopeS);
    }

    static Line level(SweepPoint point) {
        return new Line(point.currentA(), 0);
    }

    /** Where this line meets a steeper one, kept between two voltages; the upper one when it does not. */
    double meetingV(Line steeper, double lowV, double highV) {
        var meeting = (steeper.atZeroA - atZeroA) / (slopeS - steeper.slopeS);
        return meeting < highV ? Math.max(lowV, meeting) : highV;
    }

    /** Greatest power of the line between two voltages. */
    double highestPowerW(double lowV, double highV) {
        var vertexV = slopeS < 0 ? -atZeroA / (2 * slopeS) : highV;
        var voltageV = Math.max(lowV, Math.min(highV, vertexV));
        return voltageV * (atZeroA + slopeS * voltageV);
    }

    /** Voltage without current; that of no power gained when the line is level. */
    double zeroCurrentV() {
        return slopeS < 0 ? -atZeroA / slopeS : 0;
    }
}
