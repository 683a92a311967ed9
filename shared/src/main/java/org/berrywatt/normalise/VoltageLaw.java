package org.berrywatt.normalise;

/** Open-circuit voltage under another light, from the one that was read and the ratio of lights. */
@FunctionalInterface
interface VoltageLaw {
    double voltageV(double readV, double ratio);
}
