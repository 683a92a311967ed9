package org.berrywatt.normalise;

import java.util.List;
import org.berrywatt.uncertainty.Budget;
import org.berrywatt.uncertainty.FirstOrder;
import org.berrywatt.uncertainty.Input;

/**
 * The measurement model of one cell: every quantity on the way to the result as a function of the same inputs.
 *
 * @param ratio reference irradiance over effective irradiance
 */
record Model(
        List<Input> inputs,
        Term effectiveWm2,
        Term ratio,
        Term photocurrentA,
        Term areaM2,
        Term currentDensityAm2,
        Term voltageV,
        Term fillFactor,
        Term powerDensityWm2) {
    /** Clips that are set anew and a reading that still creeps: 6 % (common practice, no source). */
    private static final double CONTACT_UNCERTAINTY = 0.06;
    /** A cell near a lamp may be this much warmer or colder than assumed (common practice, no source). */
    private static final double TEMPERATURE_HALF_WIDTH_K = 10;
    /** About -2 mV/K at 0.5 V (common practice, no source). */
    private static final double VOLTAGE_PER_KELVIN = -0.004;

    static Model of(CellMeasurement cell, Reference reference) {
        var inputs = new Inputs();
        var clips = ClipTerms.of(cell.underLight(), inputs);
        var dark =
                cell.darkCurrentA() == null ? (Term) values -> 0 : inputs.add("darkCurrent", cell.darkCurrentA(), "A");
        var contact = inputs.add(Input.normal("input.contact", 1, "1", CONTACT_UNCERTAINTY));
        var area = inputs.add(Input.normal("input.area", cell.areaM2(), "m²"));
        var effective = LightTerms.of(cell.light().irradiance(), inputs).effectiveWm2();
        Term ratio = values -> reference.irradianceWm2() / effective.in(values);
        var photocurrent = clips.currentA().times(clips.burdenFactor()).minus(dark);
        var density = photocurrent.over(area).times(ratio).times(contact);
        var voltage = voltage(cell, clips, ratio, inputs);
        var fillFactor = FillFactorTerms.of(cell.underLight(), clips, ratio, inputs);
        var power = fillFactor.times(voltage).times(density);
        return new Model(inputs.list(), effective, ratio, photocurrent, area, density, voltage, fillFactor, power);
    }

    private static Term voltage(CellMeasurement cell, ClipTerms clips, Term ratio, Inputs inputs) {
        var bounds = new VoltageBounds(ShuntShare.of(cell.underLight()));
        var warmer = inputs.add(Input.rectangular("input.temperature", 0, "K", TEMPERATURE_HALF_WIDTH_K));
        var law = inputs.add(Input.rectangular("input.voltageLaw", 0, "1", 1));
        return values -> {
            var voltage = clips.voltageV().in(values);
            var atReference = bounds.middle(voltage, ratio.in(values))
                    + law.in(values) * bounds.halfWidth(voltage, ratio.in(values));
            return atReference * (1 + VOLTAGE_PER_KELVIN * warmer.in(values));
        };
    }

    Budget budget(Term term) {
        return FirstOrder.evaluate(inputs, term);
    }

    double value(Term term) {
        return term.in(inputs.stream().mapToDouble(Input::value).toArray());
    }
}
