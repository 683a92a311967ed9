package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class InputTest {

    @Test
    void namesTheInputThatIsNotFinite() {
        assertThatThrownBy(() -> Input.normal("irradiance", Double.NaN, "W/m²", 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("input irradiance must be finite with a standard uncertainty in [0, infinity),"
                        + " not NaN with 1.0");
    }

    @Test
    void refusesNegativeHalfWidth() {
        assertThatThrownBy(() -> Input.rectangular("voltage", 0.4, "V", -0.001))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("input voltage");
    }
}
