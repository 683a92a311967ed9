package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class TheilSenTest {

    /** M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973), example 9.1; ten points with one wild. */
    @ParameterizedTest
    @ValueSource(strings = {"computed", "with_outlier"})
    void agreesWithPublishedSlope(String name) throws IOException {
        JsonNode points = Published.file("theil_sen.json").at(name);
        TheilSen found = TheilSen.of(Published.numbers(points.path("x")), Published.numbers(points.path("y")))
                .value()
                .orElseThrow();
        assertThat(found.slope()).isCloseTo(Published.number(points.path("slope")), within(1e-12));
        double[] interval = Published.numbers(points.path("scipy_ci95"));
        assertThat(new double[] {found.low(), found.high()}).containsExactly(interval, within(1e-12));
    }

    @Test
    void followsALineOfVeryManyPoints() {
        double[] x = IntStream.range(0, 20_000).mapToDouble(i -> i).toArray();
        double[] y = IntStream.range(0, 20_000).mapToDouble(i -> 3 * i + 7).toArray();
        TheilSen found = TheilSen.of(x, y).value().orElseThrow();
        assertThat(found.slope()).isCloseTo(3, within(1e-12));
        assertThat(found.n()).isEqualTo(TheilSen.MOST_POINTS);
    }

    @Test
    void withholdsAnswerWhenPointsCannotTell() {
        assertThat(reason(new double[] {1, 2}, new double[] {1, 2})).isEqualTo(Reason.TOO_FEW);
        assertThat(reason(new double[] {4, 4, 4}, new double[] {1, 2, 3})).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new double[] {4, 5, Double.NaN}, new double[] {1, 2, 3}))
                .isEqualTo(Reason.NOT_FINITE);
    }

    private static Reason reason(double[] x, double[] y) {
        return ((Withheld<TheilSen>) TheilSen.of(x, y)).reason();
    }
}
