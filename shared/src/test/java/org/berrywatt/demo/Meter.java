package org.berrywatt.demo;

import org.berrywatt.curve.Diode;

/**
 * A cheap multimeter of a team: 2000 counts, 10 megohm on volts, 0.2 V over the shunt of a full current range and a fuse
 * (common practice, no source).
 *
 * @param voltageGain what it shows per true volt
 * @param currentGain what it shows per true ampere
 */
record Meter(double voltageGain, double currentGain) {

    static final double SMALL_CURRENT_A = 20e-6;
    private static final double INPUT_OHM = 10e6;
    private static final double SMALL_RANGE_OHM = 1002;
    private static final double LARGE_RANGE_OHM = 102;

    static Meter of(Draws draws) {
        return new Meter(draws.factor(0.003), draws.factor(0.006));
    }

    double voltageV(Diode cell) {
        return voltageGain * acrossV(cell, INPUT_OHM);
    }

    /** What the display shows: the cell drives its current through shunt and fuse. */
    double currentA(Diode cell) {
        double large = through(cell, LARGE_RANGE_OHM);
        return currentGain * (large < SMALL_CURRENT_A ? through(cell, SMALL_RANGE_OHM) : large);
    }

    /** Voltage across a resistor on the cell's clips, read with the meter. */
    double voltageAcrossV(Diode cell, double loadOhm) {
        double parallelOhm = 1 / (1 / loadOhm + 1 / INPUT_OHM);
        return voltageGain * acrossV(cell, parallelOhm);
    }

    private static double acrossV(Diode cell, double ohm) {
        return ohm * through(cell, ohm);
    }

    /** A resistor on the clips is more series resistance at short circuit. */
    private static double through(Diode cell, double ohm) {
        return new Diode(
                        cell.photocurrentA(),
                        cell.saturationCurrentA(),
                        cell.idealityFactor(),
                        cell.seriesResistanceOhm() + ohm,
                        cell.shuntResistanceOhm(),
                        cell.temperatureC())
                .shortCircuitCurrentA();
    }
}
