package org.berrywatt.curve;

import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/**
 * Five numbers, each free in (-∞, ∞), of which every set is a physical diode: where Isc, Voc, Voc over n kT/q, the series drop
 * Isc Rs/Voc and the shunt's part Voc/(Isc (Rs + Rsh)) lie between their bounds. The last two have 0 and 1 for bounds,
 * where the curve is a straight line.
 *
 * @param aboutA Isc lies within a factor of four of it
 * @param aboutV Voc lies within a factor of four of it
 * @param mostV greatest Voc over n kT/q, that of n = 0.5 for a single cell; the least is a twentieth of it
 */
record FitCoordinates(double aboutA, double aboutV, double mostV, double temperatureC) {
    static final int COUNT = 5;
    private static final double LEAST_IDEALITY = 0.5;
    private static final double IDEALITIES = 20;
    /** Beyond, it is a string of cells, whose ideality is as many times larger. */
    private static final double MOST_OF_ONE_CELL = 100;

    private static final double WITHIN = 4;
    private static final double EDGE = 1e-4;

    static FitCoordinates around(SweepFigures figures, double temperatureC) {
        var voltageV = figures.openCircuitVoltageV().value();
        var mostV = voltageV / (LEAST_IDEALITY * ThermalVoltage.atCelsius(temperatureC));
        return new FitCoordinates(
                figures.shortCircuitCurrentA().value(), voltageV, Math.min(MOST_OF_ONE_CELL, mostV), temperatureC);
    }

    /** The free numbers at parts of the way between the bounds, in (0, 1); Isc and Voc in their middles. */
    static RealVector at(double voltage, double drop, double shunt) {
        return new ArrayRealVector(new double[] {0, 0, free(voltage), free(drop), free(shunt)}, false);
    }

    Diode diode(RealVector free) {
        return diode(parameters(free));
    }

    Diode diode(Gradient[] parameters) {
        return new Diode(
                parameters[0].getValue(),
                parameters[1].getValue(),
                parameters[2].getValue(),
                parameters[3].getValue(),
                parameters[4].getValue(),
                temperatureC);
    }

    /** The parameters in the order of {@link DiodeParameter}, with their derivatives by the free numbers. */
    Gradient[] parameters(RealVector free) {
        var isc = around(aboutA, WITHIN, share(free, 0));
        var voc = around(aboutV, WITHIN, share(free, 1));
        var v = around(mostV / Math.sqrt(IDEALITIES), Math.sqrt(IDEALITIES), share(free, 2));
        var drop = share(free, 3);
        var rs = voc.divide(isc).multiply(drop);
        var rsh = voc.divide(isc.multiply(share(free, 4))).subtract(rs);
        var i0 = saturation(isc.subtract(voc.subtract(isc.multiply(rs)).divide(rsh)), v, drop);
        var iph = voc.divide(rsh).add(i0.multiply(v.expm1()));
        var n = voc.divide(v).divide(ThermalVoltage.atCelsius(temperatureC));
        return new Gradient[] {iph, i0, n, rs, rsh};
    }

    /** What the diode takes more at open than at short circuit, over exp(v) - exp(v drop). */
    private static Gradient saturation(Gradient moreA, Gradient v, Gradient drop) {
        return moreA.multiply(v.negate().exp())
                .divide(v.multiply(drop.subtract(1)).expm1().negate());
    }

    private static Gradient around(double middle, double factor, Gradient share) {
        return share.multiply(2).subtract(1).multiply(Math.log(factor)).exp().multiply(middle);
    }

    /** 1/(1 + exp(-x)), short of 0 and 1. */
    private static Gradient share(RealVector free, int index) {
        var x = Gradient.variable(COUNT, index, free.getEntry(index));
        return x.multiply(0.5).tanh().multiply(0.5 - EDGE).add(0.5);
    }

    private static double free(double share) {
        return Math.log(share / (1 - share));
    }
}
