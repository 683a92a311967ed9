package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.StreamSupport;
import org.berrywatt.curve.ReferenceCurves.Curve;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LoadBoxTest {
    private static final LoadBox EXACT = new LoadBox(0, Double.POSITIVE_INFINITY);

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.ReferenceCurves#dyeCells")
    void findsTheExactPointsOfResistiveLoadsFromVoltageOrCurrentAlone(Curve curve) {
        // dye_cell_regime.json: loads solved there by bisection without Lambert W
        StreamSupport.stream(curve.values().get("resistive_loads").spliterator(), false)
                .forEach(load -> {
                    var ohm = ReferenceCurves.number(load.get("load_ohm"));
                    var voltageV = ReferenceCurves.number(load.get("voltage_V"));
                    var currentA = ReferenceCurves.number(load.get("current_A"));
                    assertThat(EXACT.atVoltage(ohm, Estimate.exact(voltageV)).currentA())
                            .isCloseTo(currentA, within(1e-13 * currentA));
                    assertThat(EXACT.atCurrent(ohm, 0, Estimate.exact(currentA)).voltageV())
                            .isCloseTo(voltageV, within(1e-13 * voltageV));
                });
    }

    @Test
    void countsTheMeterBesideTheLoad() {
        // Ohm's law by hand: 1 V on 100 kohm is 10 uA, on 10 Mohm 0.1 uA
        var point = new LoadBox(0, 10e6).atVoltage(100e3, Estimate.exact(1));
        assertThat(point.currentA()).isCloseTo(10.1e-6, within(1e-18));
        var open = new LoadBox(0.05, 10e6).atVoltage(Double.POSITIVE_INFINITY, Estimate.exact(1));
        assertThat(open.currentA()).isCloseTo(0.1e-6, within(1e-18));
        assertThat(open.currentUncertaintyA()).isZero();
    }

    @Test
    void countsTheBurdenBehindTheLoad() {
        // Ohm's law by hand: 100 uA through 900 ohm and 1 kohm of a 200 uA range is 0.19 V
        assertThat(EXACT.atCurrent(900, 1000, Estimate.exact(100e-6)).voltageV())
                .isCloseTo(0.19, within(1e-15));
    }

    @Test
    void takesNoLoadAtAllAsShortCircuit() {
        var point = EXACT.atCurrent(0, 0, new Estimate(310e-6, 1e-6));
        assertThat(point).isEqualTo(new SweepPoint(0, 310e-6, 0, 1e-6));
    }

    @Test
    void givesThePowerTheUncertaintyOfVoltageSquaredOverResistance() {
        // JCGM 100:2008, 5.1.6: relative variances add, a square counts twice; half-width 5 % is 5/sqrt(3) %
        var point = new LoadBox(0.05, Double.POSITIVE_INFINITY).atVoltage(1000, new Estimate(0.3, 0.003));
        var power = Math.hypot(
                point.voltageUncertaintyV() / point.voltageV(), point.currentUncertaintyA() / point.currentA());
        assertThat(power).isCloseTo(Math.sqrt(0.02 * 0.02 + 0.05 * 0.05 / 3), within(1e-12));
    }

    @Test
    void refusesTolerancesOrMetersThatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LoadBox(1, 10e6))
                .withMessageContaining("[0, 1)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LoadBox(Double.NaN, 10e6))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LoadBox(0.01, 0))
                .withMessageContaining("(0, ∞]");
    }
}
