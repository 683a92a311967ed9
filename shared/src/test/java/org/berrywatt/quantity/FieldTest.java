package org.berrywatt.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.quantity.Field.Range;
import org.junit.jupiter.api.Test;

class FieldTest {

    @Test
    void keepsItsRangesInSi() {
        Field film = Field.of("film", Quantity.TEMPERATURE, Range.of(0, 1000), Range.of(100, 600), "degC");
        assertThat(film.possibleLowSi()).isCloseTo(273.15, within(1e-9));
        assertThat(film.usualHighSi()).isCloseTo(873.15, within(1e-9));
    }

    @Test
    void refusesUsualValuesThatAreNotPossible() {
        assertThatThrownBy(() -> Field.of("film", Quantity.LENGTH, Range.of(0, 1), Range.of(0.5, 2), "m"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("field film: the usual range [0.5, 2.0] must lie within the possible range [0.0, 1.0]");
    }

    @Test
    void refusesAnUnknownUnit() {
        assertThatThrownBy(() -> Field.of("film", Quantity.LENGTH, Range.of(0, 2), Range.of(0.5, 1), "furlong"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no unit has the key furlong");
    }
}
