package org.berrywatt.normalise;

/** The most that a shunt may take of the photocurrent at open circuit. */
final class ShuntShare {
    private ShuntShare() {}

    /** From the fall of current at short circuit where a sweep shows it, in [0, 1]; 1 where nothing is known. */
    static double of(UnderLight underLight) {
        return underLight instanceof LoadSweep sweep ? of(sweep) : 1;
    }

    private static double of(LoadSweep sweep) {
        var figures = sweep.figures();
        var shuntA = figures.shuntConductanceS() * figures.openCircuitVoltageV().value();
        return Math.min(1, shuntA / figures.shortCircuitCurrentA().value());
    }
}
