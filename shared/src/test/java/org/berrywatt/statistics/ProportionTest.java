package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class ProportionTest {

    @Test
    void agreesWithPublishedIntervals() throws IOException {
        // R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I
        for (JsonNode row : Published.file("binomial_intervals.json").at("computed")) {
            Proportion found = Proportion.wilson(
                    row.path("x").asInt(),
                    row.path("n").asInt(),
                    row.path("confidence").asDouble());
            assertThat(new double[] {found.low(), found.high()})
                    .containsExactly(Published.numbers(row.path("wilson")), within(1e-12));
        }
    }

    @Test
    void refusesCountsOutsideTheTotal() {
        assertThatThrownBy(() -> Proportion.wilson(4, 3, 0.95))
                .hasMessage("successes must lie in [0, n] and n in [1, infinity), got 4 of 3");
        assertThatThrownBy(() -> Proportion.wilson(0, 0, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Proportion.wilson(1, 3, Double.NaN)).hasMessageContaining("(0, 1), got NaN");
    }
}
