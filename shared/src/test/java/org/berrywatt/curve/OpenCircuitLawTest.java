package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.berrywatt.curve.ReferenceCurves.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class OpenCircuitLawTest {

    @ParameterizedTest
    @CsvSource({
        // exact voltages of a cell with I0 2 nA, n 1.6, no shunt, from 0.5964 V at 1000 W/m² (mpmath, 40 digits)
        "0.8,  0.587250751357031",
        "0.5,  0.567929798082016",
        "0.2,  0.530262864341547",
        "0.1,  0.501768985064928",
        "0.05, 0.473275208557469"
    })
    void isExactForACellWithoutAShunt(double ratio, double exact) {
        assertThat(new OpenCircuitLaw(1.6, 0, 25).voltageV(0.596423759574519, ratio))
                .isCloseTo(exact, within(1e-13));
    }

    @Test
    void liftsTheVoltageByTheLogarithmWhenTheLightDoubles() {
        // IEC 60891 procedure 2: n kT/q ln 2, 17.8 mV for n = 1 at 25 °C, 26.7 mV for n = 1.5
        assertThat(new OpenCircuitLaw(1, 0, 25).voltageV(0.5, 2) - 0.5).isCloseTo(0.0178, within(5e-5));
        assertThat(new OpenCircuitLaw(1.5, 0, 25).voltageV(0.5, 2) - 0.5).isCloseTo(0.0267, within(5e-5));
    }

    @Test
    void isProportionalToLightThroughTheShuntAlone() {
        assertThat(new OpenCircuitLaw(2, 1, 25).voltageV(0.2, 1.7)).isCloseTo(0.34, within(1e-15));
    }

    @Test
    void leavesTheVoltageUnderTheSameLight() {
        for (var share : new double[] {0, 0.3, 1}) {
            assertThat(new OpenCircuitLaw(2, share, 25).voltageV(0.4, 1)).isCloseTo(0.4, within(1e-15));
        }
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void holdsHomeMadeCellsBetweenIdealDiodeAndShunt(Curve curve) {
        var voc = curve.value("v_oc_V");
        var diode = new OpenCircuitLaw(1, 0, curve.diode().temperatureC());
        var shunt = new OpenCircuitLaw(3, 1, curve.diode().temperatureC());
        DoubleStream.of(0.05, 0.3, 0.8, 1.3, 3, 10)
                .forEach(ratio -> assertThat(curve.diode().underLight(ratio).openCircuitVoltageV())
                        .isBetween(
                                Math.min(diode.voltageV(voc, ratio), shunt.voltageV(voc, ratio)),
                                Math.max(diode.voltageV(voc, ratio), shunt.voltageV(voc, ratio))));
    }
}
