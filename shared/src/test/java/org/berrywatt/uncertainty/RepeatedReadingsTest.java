package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.uncertainty.Published.json;
import static org.berrywatt.uncertainty.Published.number;
import static org.berrywatt.uncertainty.Published.numbers;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class RepeatedReadingsTest {
    private static final Percentage CLOSE = Percentage.withPercentage(1e-6);

    /** JCGM 100:2008, 4.4.3 and table 1: 20 temperatures, mean 100.145 °C, s = 1.489 °C, s of the mean 0.333 °C. */
    @Test
    void reproducesTheTwentyTemperaturesOfTheGuide() {
        RepeatedReadings readings =
                RepeatedReadings.of(numbers(json("gum_type_a_temperature.json").get("data")));
        assertThat(readings.mean()).isCloseTo(100.145, within(5e-4));
        assertThat(readings.standardDeviation()).isCloseTo(1.489, within(5e-4));
        assertThat(readings.standardUncertainty()).isCloseTo(0.333, within(5e-4));
    }

    /** JCGM 100:2008, 4.2 and G.3; JCGM 101:2008, 6.4.9; two to five readings worked to fifteen digits in the file. */
    @Test
    void widensTheIntervalOfFewReadings() {
        for (JsonNode one : json("type_a_few_readings.json").get("cases")) {
            RepeatedReadings readings = RepeatedReadings.of(numbers(one.get("readings")));
            assertThat(readings.mean()).isCloseTo(number(one, "mean"), CLOSE);
            assertThat(readings.standardDeviation()).isCloseTo(number(one, "s"), CLOSE);
            assertThat(readings.standardUncertainty()).isCloseTo(number(one, "u_mean"), CLOSE);
            assertThat(readings.degreesOfFreedom()).isEqualTo((int) number(one, "nu"));
            assertThat(readings.expandedUncertainty(0.95)).isCloseTo(number(one, "U95_student"), CLOSE);
            if (one.get("u_scaled_t").isNull()) {
                assertThat(readings.standardDeviationOfStudent()).isNaN();
            } else {
                assertThat(readings.standardDeviationOfStudent()).isCloseTo(number(one, "u_scaled_t"), CLOSE);
            }
        }
    }

    @Test
    void entersAModelAsStudentsT() {
        Input input = RepeatedReadings.of(0.412, 0.408, 0.415).input("voltage", "V");
        assertThat(input.shape()).isEqualTo(Shape.STUDENT);
        assertThat(input.degreesOfFreedom()).isEqualTo(2);
        assertThat(input.standardUncertainty()).isCloseTo(0.00202758751, within(1e-11));
    }

    @Test
    void asksToReadOnceMoreWhenThereIsOneReading() {
        assertThatThrownBy(() -> RepeatedReadings.of(1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("repeated readings must be [2, infinity) in number, not 1; read once more");
    }

    @Test
    void refusesReadingThatIsNoNumber() {
        assertThatThrownBy(() -> RepeatedReadings.of(1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a reading must be finite, not NaN");
    }
}
