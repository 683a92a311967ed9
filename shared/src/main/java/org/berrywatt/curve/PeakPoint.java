package org.berrywatt.curve;

import org.berrywatt.uncertainty.Estimate;

/**
 * Where the power of a measured curve peaks: V = √(P V/I) and I = P/V. The peak is flat, so that voltage and current are less
 * sure than the power.
 */
public record PeakPoint(Estimate voltageV, Estimate currentA) {

    static PeakPoint of(PowerFit fit) {
        var voltageV = Math.sqrt(fit.powerW().value() * Math.exp(fit.logLoad().value()));
        var relative =
                Math.hypot(fit.powerW().relativeUncertainty(), fit.logLoad().standardUncertainty()) / 2;
        var currentA = fit.powerW().value() / voltageV;
        return new PeakPoint(new Estimate(voltageV, voltageV * relative), new Estimate(currentA, currentA * relative));
    }
}
