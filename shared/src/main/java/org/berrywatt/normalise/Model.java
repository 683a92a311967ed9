package org.berrywatt.normalise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.berrywatt.uncertainty.Input;

/**
 * The measurement model of one cell: every quantity on the way to the result as a function of the same inputs.
 *
 * @param fitted whether a diode fitted to a sweep tells how the figures follow the light, all the way or its first part
 * @param ratio reference irradiance over effective irradiance
 * @param photocurrentA current that comes from light, as read
 * @param currentFactor by how much the current differs from proportional to light, and for temperature
 */
record Model(
        List<Input> inputs,
        boolean fitted,
        ClipTerms clips,
        Term effectiveWm2,
        Term ratio,
        Term photocurrentA,
        Term currentFactor,
        Scaling scaling,
        Map<Measurand, Term> figures) {
    static final String AREA = "input.area";

    /** Clips that are set anew and a reading that still creeps: 6 % (common practice, no source). */
    private static final double CONTACT_UNCERTAINTY = 0.06;

    static Model of(CellMeasurement cell, Reference reference) {
        return of(cell, reference, LikelyDiodes.of(cell.underLight()));
    }

    private static Model of(CellMeasurement cell, Reference reference, Optional<LikelyDiodes> diodes) {
        var inputs = new Inputs();
        var clips = ClipTerms.of(cell, inputs);
        var dark = dark(cell, inputs);
        var contact = inputs.addLogarithm(Input.normal("input.contact", 1, "1", CONTACT_UNCERTAINTY));
        var area = inputs.addLogarithm(Input.normal(AREA, cell.areaM2(), "m²"));
        var light = LightTerms.of(cell.light(), inputs);
        var ratio = Ratio.of(
                reference, light, cell.light().irradiance().effectiveWm2().value());
        var warmth = TemperatureTerms.of(cell.temperature(), inputs);
        var scaling = Scaling.of(cell.underLight(), diodes, clips, ratio, inputs);
        var photocurrent = clips.currentA().minus(dark);
        var currentFactor = scaling.currentFactor().times(warmth.currentFactor());
        var density = photocurrent
                .times(contact.minus(area).plus(ratio.logarithm()).then(Math::exp))
                .times(currentFactor)
                .atLeastZero();
        var voltage = scaling.voltageV()
                .plus(clips.voltageV().times(warmth.voltagePart()))
                .atLeastZero();
        var efficiency = scaling.fillFactorAsRead()
                .times(clips.voltageV())
                .times(photocurrent)
                .times(contact.minus(area).minus(light.logTotal()).then(Math::exp))
                .atLeastZero();
        return new Model(
                inputs.list(),
                diodes.isPresent(),
                clips,
                light.logEffective().then(Math::exp),
                ratio.term(),
                photocurrent,
                currentFactor,
                scaling,
                Map.of(
                        Measurand.CURRENT_DENSITY, density,
                        Measurand.VOLTAGE, voltage,
                        Measurand.FILL_FACTOR, scaling.fillFactor().then(part -> Math.min(1, Math.max(0, part))),
                        Measurand.POWER_DENSITY,
                                scaling.peakPart().times(voltage).times(density).atLeastZero(),
                        Measurand.EFFICIENCY, efficiency));
    }

    private static Term dark(CellMeasurement cell, Inputs inputs) {
        var dark = cell.darkCurrentA();
        return dark == null ? Term.constant(0) : inputs.add("darkCurrent", dark, "A");
    }

    Term figure(Measurand measurand) {
        return figures.getOrDefault(measurand, Term.constant(0));
    }

    /** A quantity at the values of the inputs. */
    double value(Term term) {
        return term.in(inputs.stream().mapToDouble(Input::value).toArray());
    }
}
