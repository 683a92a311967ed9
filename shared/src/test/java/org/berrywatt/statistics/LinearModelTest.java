package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class LinearModelTest {

    /** NIST/ITL Statistical Reference Datasets, linear regression: certified values. */
    @ParameterizedTest
    @CsvSource({
        "Norris, 1, 10",
        "Pontius, 2, 9",
        "Longley, 6, 9",
        "Wampler1, 5, 8",
        "Wampler2, 5, 9",
        "Wampler4, 5, 7",
        "NoInt1, 0, 12"
    })
    void agreesWithCertifiedRegression(String name, int degree, int digits) throws IOException {
        List<double[]> data = Nist.rows("linear_" + name);
        JsonNode certified = Nist.certified("linear_regression", name);
        LinearModel found = LinearModel.fit(
                        data.stream().map(row -> terms(row, degree)).toArray(double[][]::new),
                        data.stream().mapToDouble(row -> row[0]).toArray(),
                        0)
                .value()
                .orElseThrow();
        Nist.agrees(found.coefficients(), Published.numbers(certified.path("estimates")), digits);
        if (Published.number(certified.path("residual_sd")) > 0) {
            Nist.agrees(found.standardErrors(), Published.numbers(certified.path("standard_errors")), digits);
            Nist.agrees(
                    new double[] {found.residualDeviation()},
                    new double[] {Published.number(certified.path("residual_sd"))},
                    digits);
        }
        assertThat(found.residualDegrees())
                .isEqualTo(certified.path("df_residual").asInt());
    }

    /** Powers of one x, several x as they are, or x alone without intercept. */
    private static double[] terms(double[] row, int degree) {
        if (degree == 0) {
            return new double[] {row[1]};
        }
        return row.length > 2
                ? IntStream.range(0, row.length)
                        .mapToDouble(i -> i == 0 ? 1 : row[i])
                        .toArray()
                : IntStream.rangeClosed(0, degree)
                        .mapToDouble(i -> Math.pow(row[1], i))
                        .toArray();
    }

    @Test
    void findsInfluenceOfSinglePoints() throws IOException {
        // F. J. Anscombe, The American Statistician 27 (1973) 17-21
        Published file = Published.file("anscombe_quartet.json");
        for (int set = 0; set < 4; set++) {
            JsonNode one = file.at("computed", String.valueOf(set));
            double[][] rows = Arrays.stream(Published.numbers(one.path("x")))
                    .mapToObj(x -> new double[] {1, x})
                    .toArray(double[][]::new);
            LinearModel found = LinearModel.fit(rows, Published.numbers(one.path("y")), 0)
                    .value()
                    .orElseThrow();
            assertThat(found.coefficients()[1]).isCloseTo(one.path("slope").asDouble(), within(1e-12));
            assertThat(found.standardErrors()[1]).isCloseTo(one.path("se_slope").asDouble(), within(1e-12));
            assertThat(found.leverages()).containsExactly(Published.numbers(one.path("leverage")), within(1e-12));
            for (int row = 0; row < rows.length; row++) {
                JsonNode distance = one.path("cooks_distance").path(row);
                if (distance.isNumber()) {
                    assertThat(found.cooksDistances()[row]).isCloseTo(distance.asDouble(), within(1e-9));
                }
            }
        }
    }

    @Test
    void withholdsAnswerWhenTheRowsCannotTell() {
        double[] y = {1, 2, 4};
        assertThat(reason(y, new double[] {1, 1}, new double[] {1, 1}, new double[] {1, 1}))
                .isEqualTo(Reason.DEPENDENT_COLUMNS);
        assertThat(reason(y, new double[] {1, 0}, new double[] {1, 0}, new double[] {1, 0}))
                .isEqualTo(Reason.DEPENDENT_COLUMNS);
        assertThat(reason(new double[] {1, 2}, new double[] {1, 3}, new double[] {1, 1}))
                .isEqualTo(Reason.TOO_FEW);
        assertThat(reason(y, new double[] {1}, new double[] {Double.NaN}, new double[] {1}))
                .isEqualTo(Reason.NOT_FINITE);
    }

    private static Reason reason(double[] y, double[]... rows) {
        return ((Withheld<LinearModel>) LinearModel.fit(rows, y, 0)).reason();
    }

    /** Files of the NIST/ITL Statistical Reference Datasets. */
    static final class Nist {

        private static final Path FOLDER = Path.of("src/test/resources/nist");

        private Nist() {}

        static List<double[]> rows(String name) throws IOException {
            return Files.readAllLines(FOLDER.resolve(name + ".csv")).stream()
                    .filter(line -> !line.startsWith("#") && !line.matches("[a-z].*"))
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        }

        static JsonNode certified(String kind, String name) {
            return new ObjectMapper()
                    .readTree(FOLDER.resolve("certified_values.json"))
                    .path(kind)
                    .path(name);
        }

        /** Correct decimal digits, as the log of the relative error. */
        static void agrees(double[] found, double[] certified, int digits) {
            for (int i = 0; i < certified.length; i++) {
                assertThat(Math.abs(found[i] - certified[i]))
                        .as("%d: %s for %s", i, found[i], certified[i])
                        .isLessThanOrEqualTo(Math.abs(certified[i]) * Math.pow(10, -digits));
            }
        }
    }
}
