package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class IncidenceTest {

    static Stream<Arguments> cosines() throws IOException {
        try (var file = Objects.requireNonNull(IncidenceTest.class.getResourceAsStream("/light/cosine_law.json"))) {
            var rows = JsonMapper.shared().readTree(file).path("cosines");
            return StreamSupport.stream(rows.spliterator(), false)
                    .map(row -> Arguments.of(
                            row.path("theta_deg").asDouble(),
                            row.path("irradiance_for_1000_normal").asDouble()))
                    .filter(row -> !row.get()[0].equals(90.0))
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("cosines")
    void leavesTheCosineOfTheLight(double angleDeg, double irradianceWm2) {
        // cosine law of a flat receiver, to 40 digits by mpmath
        assertThat(new Incidence(angleDeg, 0).on(Estimate.exact(1000)).value()).isCloseTo(irradianceWm2, within(1e-11));
    }

    @Test
    void growsMoreUncertainTheMoreAskewTheLight() {
        // by hand: d cos/cos = tan 45° · 2° in rad = 3.49 %
        assertThat(Incidence.byProtractor(45).cosine().relativeUncertainty()).isCloseTo(0.0349, within(1e-3));
        assertThat(Incidence.byProtractor(0).cosine().relativeUncertainty()).isLessThan(0.001);
        assertThat(new Incidence(45, 0).on(new Estimate(1000, 50)).relativeUncertainty())
                .isCloseTo(0.05, within(1e-12));
    }

    @Test
    void isFlaggedBeyondSixtyDegrees() {
        assertThat(new Incidence(60, 0).flagged()).isFalse();
        assertThat(new Incidence(60.1, 0).flagged()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 90, 180, Double.NaN})
    void refusesLightFromTheSideOrBehind(double angleDeg) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Incidence(angleDeg, 0))
                .withMessageContaining("[0, 90)°");
    }
}
