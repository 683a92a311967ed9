package org.berrywatt.curve;

/** exp(x) - 1 to the last digits, quick where the plain difference keeps them. */
final class Exponential {
    private static final double SMALL = 0.5;

    private Exponential() {}

    static double lessOne(double x) {
        return Math.abs(x) < SMALL ? Math.expm1(x) : Math.exp(x) - 1;
    }
}
