package org.berrywatt.normalise;

/** The most that a shunt may take of the photocurrent at open circuit. */
final class ShuntShare {
    private ShuntShare() {}

    /** From the fall of current at short circuit where a sweep shows it, in [0, 1]; 1 where nothing is known. */
    static double of(UnderLight underLight) {
        return underLight instanceof LoadSweep sweep ? of(sweep) : 1;
    }

    private static double of(LoadSweep sweep) {
        return of(sweep, sweep.figures().openCircuitVoltageV().value(), 1);
    }

    /** Under another light, where the open-circuit voltage is known. */
    static double of(LoadSweep sweep, double voltageV, double ratio) {
        var figures = sweep.figures();
        return Math.min(
                1,
                figures.shuntConductanceS()
                        * voltageV
                        / (ratio * figures.shortCircuitCurrentA().value()));
    }
}
