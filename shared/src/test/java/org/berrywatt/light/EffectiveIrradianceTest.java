package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class EffectiveIrradianceTest {

    @Test
    void readsFullSunlightFromItsIlluminance() {
        // ASTM G173-03 with CIE 1924 V(λ): AM1.5 global has 109 494.88 lx at 1000.37 W/m²
        var light = lux(Lamp.SUN, 109_494.88);
        assertThat(light.totalWm2().value()).isCloseTo(1000.37, within(0.01));
        assertThat(light.effectiveWm2().value()).isCloseTo(1000.37, within(0.01));
        assertThat(light.efficacyLmPerW().value()).isCloseTo(109.454, within(0.001));
    }

    @Test
    void findsTheEfficacyOfOutdoorSunlightWithinItsUncertainty() {
        // Michael, Johnston, Moreno 2020: 122 ± 1 lx per W/m² measured outdoors
        var efficacy = lux(Lamp.SUN, 1_000).efficacyLmPerW();
        assertThat(122.0).isBetween(efficacy.low(), efficacy.high());
    }

    @Test
    void turnsAThousandLuxIntoTheUsualTotalIrradiance() {
        // 1 klx of white LED light is about 3.1 W/m², of halogen light 36 to 63 W/m² (common practice, no source)
        assertThat(lux(Lamp.COOL_LED, 1_000).totalWm2().value()).isBetween(2.9, 3.4);
        assertThat(lux(Lamp.WARM_LED, 1_000).totalWm2().value()).isBetween(2.9, 3.4);
        assertThat(lux(Lamp.HALOGEN, 1_000).totalWm2().value()).isBetween(36.0, 63.0);
    }

    @Test
    void seesThatEqualLuxIsFairAndEqualWattsAreNot() {
        var led = lux(Lamp.COOL_LED, 5_000);
        var halogen = lux(Lamp.HALOGEN, 5_000);
        assertThat(led.effectiveWm2().value() / halogen.effectiveWm2().value()).isBetween(0.8, 1.25);
        assertThat(halogen.totalWm2().value() / led.totalWm2().value()).isGreaterThan(10);
    }

    @ParameterizedTest
    @EnumSource
    void agreesBetweenInstrumentsThatReadTheSameLight(Lamp lamp) {
        var byLux = lux(lamp, 2_000);
        var bySolarMeter = EffectiveIrradiance.of(
                lamp,
                Instrument.SOLAR_METER,
                DyeFamily.ANTHOCYANIN,
                Estimate.exact(byLux.totalWm2().value()),
                false);
        assertThat(bySolarMeter.effectiveWm2().value())
                .isCloseTo(byLux.effectiveWm2().value(), within(1e-9));
        assertThat(bySolarMeter.totalWm2().value()).isCloseTo(byLux.totalWm2().value(), within(1e-9));
    }

    @Test
    void isProportionalToTheReading() {
        assertThat(lux(Lamp.HALOGEN, 4_000).effectiveWm2().value())
                .isCloseTo(2 * lux(Lamp.HALOGEN, 2_000).effectiveWm2().value(), within(1e-12));
    }

    @Test
    void followsTheEyeWhereverTheDisplayShowsLux() {
        var byName = EffectiveIrradiance.of(
                Lamp.HALOGEN, Instrument.SOLAR_METER, DyeFamily.BETALAIN, Estimate.exact(900), true);
        assertThat(byName.instrument()).isEqualTo(Instrument.LUX_METER);
        assertThat(byName.readingLx()).isCloseTo(900, within(1e-9));
    }

    @Test
    void carriesReadingCalibrationAndMismatchInItsUncertainty() {
        var light = EffectiveIrradiance.of(
                Lamp.COOL_LED, Instrument.LUX_METER, DyeFamily.ANTHOCYANIN, new Estimate(1_000, 50), true);
        var expected =
                Math.sqrt(0.05 * 0.05 + 0.1 * 0.1 + Math.pow(light.mismatch().relativeUncertainty(), 2));
        assertThat(light.effectiveWm2().relativeUncertainty()).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1})
    void refusesALightReadingThatIsNotAboveZero(double reading) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> lux(Lamp.SUN, reading))
                .withMessageContaining("(0, infinity)");
    }

    private static EffectiveIrradiance lux(Lamp lamp, double lux) {
        return EffectiveIrradiance.of(lamp, Instrument.LUX_METER, DyeFamily.ANTHOCYANIN, Estimate.exact(lux), true);
    }
}
