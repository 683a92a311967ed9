package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.berrywatt.uncertainty.Published.json;
import static org.berrywatt.uncertainty.Published.number;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class StudentTest {
    private static final Percentage CLOSE = Percentage.withPercentage(1e-6);

    /** JCGM 100:2008, table G.2, computed to more digits in the file. */
    @ParameterizedTest
    @ValueSource(strings = {"68.27", "90", "95", "95.45", "99", "99.73"})
    void reproducesTheTableOfFactors(String percent) {
        double probability = Double.parseDouble(percent) / 100;
        JsonNode published = json("coverage_factors.json");
        for (JsonNode row : published.get("table")) {
            assertThat(Student.factor(probability, number(row, "nu"))).isCloseTo(number(row, percent), CLOSE);
        }
        assertThat(Student.factor(probability, Double.POSITIVE_INFINITY))
                .isCloseTo(number(published.get("normal"), percent), CLOSE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, Double.NaN})
    void refusesProbabilityOutsideItsRange(double probability) {
        assertThatThrownBy(() -> Student.factor(probability, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a probability of coverage lies in (0, 1), not " + probability);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void refusesDegreesOfFreedomOutsideTheirRange(double degrees) {
        assertThatThrownBy(() -> Student.factor(0.95, degrees))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("degrees of freedom lie in (0, infinity], not " + degrees);
    }
}
