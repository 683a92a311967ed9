package org.berrywatt.contract.calculation;

import java.util.List;

/**
 * A single diode fitted to a measured curve.
 *
 * @param idealityFactor of one cell of the series
 * @param rmseA root of the mean square difference in current
 * @param uncertainties how sure each parameter is, under the parameter's name; intervals of factors, always above 0
 * @param unidentifiable names of the parameters that these points cannot tell
 */
public record FittedDiode(
        double photocurrentA,
        double saturationCurrentA,
        double idealityFactor,
        double seriesResistanceOhm,
        double shuntResistanceOhm,
        double rmseA,
        Uncertainties uncertainties,
        List<String> unidentifiable) {

    /** How sure the parameters are. */
    public record Uncertainties(
            Spread photocurrentA,
            Spread saturationCurrentA,
            Spread idealityFactor,
            Spread seriesResistanceOhm,
            Spread shuntResistanceOhm) {}
}
