package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceCellTest {
    /** 30 mA ± 2 % at 1000 W/m². */
    private final ReferenceCell cell = new ReferenceCell(new Estimate(0.030, 0.0006), 1000);

    @Test
    void readsSunlightInProportionToItsCurrent() {
        // IEC 60904-2 by hand: 12 mA of 30 mA is 400 W/m²
        var reading = cell.readingWm2(new Estimate(0.012, 0.00012));
        assertThat(reading.value()).isCloseTo(400, within(1e-9));
        assertThat(reading.relativeUncertainty()).isCloseTo(0.01, within(1e-12));
    }

    @Test
    void bringsItsOwnCalibrationIntoTheLight() {
        var light = EffectiveIrradiance.of(Lamp.SUN, cell, DyeFamily.ANTHOCYANIN, Estimate.exact(0.024));
        assertThat(light.effectiveWm2().value()).isCloseTo(800, within(1e-9));
        assertThat(light.calibration().standardUncertainty()).isCloseTo(0.02, within(1e-12));
        assertThat(light.instrument()).isEqualTo(Instrument.REFERENCE_CELL);
    }

    @Test
    void agreesWithALuxMeterUnderTheSameLamp() {
        // one halogen lamp, whatever reads it: the effective irradiance is the same
        var byLux = EffectiveIrradiance.of(
                Lamp.HALOGEN, Instrument.LUX_METER, DyeFamily.BETALAIN, Estimate.exact(5000), true);
        var siliconSees = byLux.totalWm2().value()
                / LampTable.of(Lamp.HALOGEN).total(Instrument.REFERENCE_CELL).value();
        var byCell = EffectiveIrradiance.of(
                Lamp.HALOGEN, cell, DyeFamily.BETALAIN, Estimate.exact(0.030 * siliconSees / 1000));
        assertThat(byCell.effectiveWm2().value()).isCloseTo(byLux.effectiveWm2().value(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.01})
    void refusesACurrentThatNoLightGives(double currentA) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cell.readingWm2(Estimate.exact(currentA)))
                .withMessageContaining("(0, ∞) A");
    }

    @Test
    void refusesACalibrationWithoutCurrentOrLight() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ReferenceCell(Estimate.exact(0), 1000));
        assertThatIllegalArgumentException().isThrownBy(() -> new ReferenceCell(Estimate.exact(0.03), Double.NaN));
    }
}
