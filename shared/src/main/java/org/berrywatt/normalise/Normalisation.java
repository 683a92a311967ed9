package org.berrywatt.normalise;

/**
 * From what a meter showed to a cell's result at reference conditions.
 *
 * <pre>
 * Geff = reading · calibration · M              effective irradiance (IEC 60904-7)
 * Iph  = Isc · b - Idark                        photocurrent; b corrects for the meter's burden
 * J    = Iph / A · Gref / Geff                  current density, proportional to light (IEC 60904-10)
 * Voc, FF  with a sweep: as read, times what the fitted diode says of the change of light
 *          without: between the ideal diode and the leaky law (log law of IEC 60891 procedure 2, and the straight one),
 *          and between 1/4 and an ideal diode's
 * P/A  = FF · Voc · J
 * </pre>
 *
 * <p>What is not known enters as an input with its distribution; the budget is the first-order law of JCGM 100 over all of
 * them at once, the trials those of JCGM 101, so that the light, which scales current and voltage alike, is counted once.
 */
public final class Normalisation {
    private Normalisation() {}

    /**
     * The result of one cell.
     *
     * @throws NormalisationRefused when area, voltage or photocurrent is not in (0, ∞), or the effective irradiance not in
     *     [0.01, 5000] W/m²
     */
    public static Result of(CellMeasurement cell, Reference reference) {
        Doors.check(cell);
        var model = Model.of(cell, reference);
        Doors.photocurrent(model.value(model.photocurrentA()));
        var evaluation = new Evaluation(model);
        var power = evaluation.budget(Measurand.POWER_DENSITY);
        return new Result(
                cell.light().irradiance(),
                evaluation,
                power,
                power.estimate().times(reference.areaM2()),
                Worked.steps(cell, reference, model, power),
                Notes.of(cell, model),
                Shared.of(cell.light(), power));
    }
}
