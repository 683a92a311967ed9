package org.berrywatt.contract.calculation;

import java.util.List;
import org.berrywatt.contract.Remark;

/**
 * The light on the cell.
 *
 * @param irradianceWm2 total irradiance
 * @param effectiveIrradianceWm2 sunlight under which this dye would deliver the same current
 * @param uncertainties how sure each figure is, under the figure's name
 * @param notes what a reader should know
 */
public record LightAnswer(
        double efficacyLmPerW,
        double irradianceWm2,
        double illuminanceLx,
        double spectralMismatch,
        double effectiveIrradianceWm2,
        Uncertainties uncertainties,
        List<Remark> notes) {

    /** How sure the figures are. */
    public record Uncertainties(
            Spread efficacyLmPerW,
            Spread irradianceWm2,
            Spread illuminanceLx,
            Spread spectralMismatch,
            Spread effectiveIrradianceWm2) {}
}
