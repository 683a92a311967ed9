package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class WeightedLineTest {

    @Test
    void reproducesTheCertifiedSlopeOfNorris() throws IOException {
        // NIST StRD, linear regression, Norris: slope 1.00211681802045, standard error 0.429796848199937e-3.
        // Weights all alike and far too high, so that the scatter makes the uncertainty
        var rows = norris();
        var line = WeightedLine.through(column(rows, 1), column(rows, 0), alike(rows.length, 1e-3));
        assertThat(line.slope()).isCloseTo(1.00211681802045, Percentage.withPercentage(1e-11));
        assertThat(line.slopeUncertainty()).isCloseTo(0.429796848199937e-3, Percentage.withPercentage(1e-9));
    }

    @Test
    void keepsWhatThePointsPromiseWhenTheyLieCloser() {
        // by hand: x = 0, 1, 2 has spread 2, u = 0.1/√2
        var line = WeightedLine.through(new double[] {0, 1, 2}, new double[] {0, 1, 2}, alike(3, 0.1));
        assertThat(line.slope()).isCloseTo(1, within(1e-12));
        assertThat(line.slopeUncertainty()).isCloseTo(0.1 / Math.sqrt(2), within(1e-12));
    }

    @Test
    void trustsSurePointsMore() {
        // by hand: the middle point, off by 1, weighs next to nothing
        var line = WeightedLine.through(
                new double[] {0, 1, 2, 3}, new double[] {0, 2, 2, 3}, new double[] {0.01, 100, 0.01, 0.01});
        assertThat(line.slope()).isCloseTo(1, within(1e-6));
    }

    @Test
    void needsTwoPlaces() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightedLine.through(new double[] {1, 1}, new double[] {1, 2}, alike(2, 1)));
    }

    private static double[] alike(int length, double value) {
        var all = new double[length];
        Arrays.fill(all, value);
        return all;
    }

    private static double[] column(double[][] rows, int column) {
        return Arrays.stream(rows).mapToDouble(row -> row[column]).toArray();
    }

    private static double[][] norris() throws IOException {
        var file = Objects.requireNonNull(WeightedLineTest.class.getResourceAsStream("/nist/linear_Norris.csv"));
        try (var lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> Character.isDigit(line.charAt(0)))
                    .map(line -> line.split(",", -1))
                    .map(cells -> Arrays.stream(cells)
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toArray(double[][]::new);
        }
    }
}
