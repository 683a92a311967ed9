package org.berrywatt.curve;

/** The five parameters of a {@link Diode}, in the order of every array and matrix over them. */
public enum DiodeParameter {
    /** Iph in A. */
    PHOTOCURRENT,
    /** I0 in A. */
    SATURATION_CURRENT,
    /** n, times the number of cells in series. */
    IDEALITY,
    /** Rs in ohm. */
    SERIES_RESISTANCE,
    /** Rsh in ohm. */
    SHUNT_RESISTANCE;

    /** The parameter's value in a diode, in SI units. */
    public double of(Diode diode) {
        return switch (this) {
            case PHOTOCURRENT -> diode.photocurrentA();
            case SATURATION_CURRENT -> diode.saturationCurrentA();
            case IDEALITY -> diode.idealityFactor();
            case SERIES_RESISTANCE -> diode.seriesResistanceOhm();
            case SHUNT_RESISTANCE -> diode.shuntResistanceOhm();
        };
    }
}
