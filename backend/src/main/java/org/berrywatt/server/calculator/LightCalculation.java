package org.berrywatt.server.calculator;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.LightAnswer;
import org.berrywatt.contract.calculation.LightRequest;
import org.berrywatt.light.DyeFamily;
import org.berrywatt.light.EffectiveIrradiance;
import org.berrywatt.light.Instrument;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.uncertainty.Estimate;

/** The light on a cell, from a reading of it. */
final class LightCalculation {

    private LightCalculation() {}

    static LightAnswer of(LightRequest request) {
        var geometry = LightGeometry.of(request);
        return answer(irradiance(request, geometry, Estimate.exact(reading(request))), geometry);
    }

    /** What the display of the light meter shows, in lx or in W/m². */
    static double reading(LightRequest request) {
        return isLux(request)
                ? Ranges.ILLUMINANCE_LX.need("illuminanceLx", request.illuminanceLx())
                : Ranges.IRRADIANCE_WM2.need("irradianceWm2", request.irradianceWm2());
    }

    /** The light at the cell behind a reading that is as uncertain as given. */
    static EffectiveIrradiance irradiance(LightRequest request, LightGeometry geometry, Estimate reading) {
        return EffectiveIrradiance.of(
                LightSources.of(request),
                Keys.INSTRUMENTS.or(Instrument.SOLAR_METER, "instrument", request.instrument()),
                Keys.DYES.or(DyeFamily.OTHER, "dye", request.dye()),
                geometry.atCell(reading),
                isLux(request));
    }

    private static boolean isLux(LightRequest request) {
        var lux = request.illuminanceLx() != null;
        if (lux == (request.irradianceWm2() != null)) {
            throw Refusal.of(ProblemCode.CALCULATION_EITHER)
                    .field(lux ? "irradianceWm2" : "illuminanceLx")
                    .limit("illuminanceLx, irradianceWm2");
        }
        return lux;
    }

    private static LightAnswer answer(EffectiveIrradiance light, LightGeometry geometry) {
        return new LightAnswer(
                light.efficacyLmPerW().value(),
                light.totalWm2().value(),
                light.illuminanceLx().value(),
                light.mismatch().value(),
                light.effectiveWm2().value(),
                new LightAnswer.Uncertainties(
                        Spreads.of(light.efficacyLmPerW()),
                        Spreads.of(light.totalWm2()),
                        Spreads.of(light.illuminanceLx()),
                        Spreads.of(light.mismatch()),
                        Spreads.of(light.effectiveWm2())),
                geometry.notes());
    }
}
