package org.berrywatt.curve;

import org.berrywatt.uncertainty.Estimate;

/**
 * One parameter of a fitted diode.
 *
 * @param value best fit in the SI unit of the parameter, in (0, ∞)
 * @param uncertaintyOfLog standard uncertainty of the value's natural logarithm, in (0, ∞): 0.1 is about 10 % up and down
 * @param identifiable whether the points hold the value to within a factor of two up and down, at 95 %
 */
public record FittedParameter(DiodeParameter parameter, double value, double uncertaintyOfLog, boolean identifiable) {
    private static final double LARGEST_KNOWN = Math.log(2) / Estimate.COVERAGE_95;

    static FittedParameter of(DiodeParameter parameter, Diode diode, double uncertainty) {
        return new FittedParameter(parameter, parameter.of(diode), uncertainty, uncertainty <= LARGEST_KNOWN);
    }
}
