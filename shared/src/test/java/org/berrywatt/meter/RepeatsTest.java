package org.berrywatt.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.uncertainty.Shape;
import org.junit.jupiter.api.Test;

class RepeatsTest {
    /** Three readings of 0.412, 0.408, 0.415 V: s/√3 = 2.02758751 mV (JCGM 100:2008, 4.2; computed with mpmath). */
    private final Repeats repeats = Repeats.of(new AccuracyStatement(0.5, 2), 0.001, 0.412, 0.408, 0.415);

    @Test
    void addsTheMetersAccuracyToTheScatter() {
        // ±(0.5 % of 0.411667 V + 2 mV) = ±4.058 mV, u = 2.343 mV; √(2.0276² + 2.343²) = 3.0985 mV
        assertThat(repeats.estimate().value()).isCloseTo(0.411666667, within(1e-9));
        assertThat(repeats.estimate().standardUncertainty()).isCloseTo(3.0985e-3, within(1e-6));
    }

    @Test
    void keepsScatterAndAccuracyApartAsInputs() {
        var inputs = repeats.inputs("voltage", "V");
        assertThat(inputs.get(0).shape()).isEqualTo(Shape.STUDENT);
        assertThat(inputs.get(0).value() + inputs.get(1).value()).isCloseTo(0.411666667, within(1e-9));
        assertThat(inputs.get(1).shape()).isEqualTo(Shape.RECTANGULAR);
        assertThat(inputs.get(1).standardUncertainty()).isCloseTo(2.343e-3, within(1e-6));
    }

    @Test
    void refusesASingleReading() {
        assertThatIllegalArgumentException().isThrownBy(() -> Repeats.of(new AccuracyStatement(0.5, 2), 0.001, 0.4));
    }
}
