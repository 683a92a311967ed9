package org.berrywatt.normalise;

import java.util.stream.Stream;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;

/** From what the light meter showed to the light that counts. */
final class LightStep {
    private LightStep() {}

    static Stream<Step> of(EffectiveIrradiance light) {
        var mismatch = Show.number(light.mismatch().value());
        var result = Show.irradiance(light.effectiveWm2().value());
        return Stream.of(
                light.instrument() == Instrument.LUX_METER
                        ? new Step("step.effectiveIrradiance", "Geff = E / K · M", lux(light) + mismatch, result)
                        : new Step("step.effectiveIrradiance", "Geff = G · M", watts(light) + mismatch, result));
    }

    private static String lux(EffectiveIrradiance light) {
        return Show.number(light.readingLx()) + " lx / " + Show.number(light.sunlightLxPerWm2()) + " lx/(W/m²) · ";
    }

    private static String watts(EffectiveIrradiance light) {
        return Show.irradiance(light.readingWm2().value()) + " · ";
    }
}
