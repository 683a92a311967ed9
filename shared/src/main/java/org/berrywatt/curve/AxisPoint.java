package org.berrywatt.curve;

/** A point seen from one axis: how far along, and what is wanted at 0. */
record AxisPoint(double x, double y, double xUncertainty, double yUncertainty) {
    static AxisPoint ofVoltage(SweepPoint point) {
        return new AxisPoint(
                point.voltageV(), point.currentA(), point.voltageUncertaintyV(), point.currentUncertaintyA());
    }

    static AxisPoint ofCurrent(SweepPoint point) {
        return new AxisPoint(
                point.currentA(), point.voltageV(), point.currentUncertaintyA(), point.voltageUncertaintyV());
    }

    double distance() {
        return Math.abs(x);
    }
}
