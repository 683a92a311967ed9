package org.berrywatt.curve;

/** Which current of the model is compared with the measured one. */
public enum FitCriterion {
    /** The current that solves the model at the measured voltage: what the curve says. The usual choice. */
    SOLVED,
    /**
     * The right-hand side of the model with the measured current put in. Cheaper, and a little off, but what most published
     * comparisons minimise since T. Easwarakhanthan et al., International Journal of Solar Energy 4 (1986) 1-12.
     */
    INSERTED;

    double currentA(Diode diode, SweepPoint point) {
        return this == SOLVED
                ? diode.currentA(point.voltageV())
                : diode.current(point.voltageV() + point.currentA() * diode.seriesResistanceOhm());
    }

    /** The current with which the junction voltage of the comparison is had. */
    double junctionV(Diode diode, SweepPoint point, double modelA) {
        return point.voltageV() + (this == SOLVED ? modelA : point.currentA()) * diode.seriesResistanceOhm();
    }

    /** By how much the model's current feels its own feedback over the series resistance, in [1, ∞). */
    double feedback(Diode diode, double conductanceS) {
        return this == SOLVED ? 1 + diode.seriesResistanceOhm() * conductanceS : 1;
    }
}
