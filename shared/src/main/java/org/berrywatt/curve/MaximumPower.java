package org.berrywatt.curve;

/** The point of a curve where voltage times current is largest. */
public record MaximumPower(double voltageV, double currentA) {
    /** Power in W. */
    public double powerW() {
        return voltageV * currentA;
    }
}
