package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class FirthLogisticTest {

    private static final Offset<Double> SIX_DIGITS = within(1e-6);

    @Test
    void agreesWithPublishedModelOfQuasiSeparatedData() throws IOException {
        // G. Heinze and M. Schemper, Statistics in Medicine 21 (2002) 2409-2419: endometrial cancer, 79 women
        Published women = Published.file("firth_logistic_endometrial.json");
        double[] grade = women.data("HG");
        double[][] rows = rows(women.data("NV"), women.data("PI"), women.data("EH"));
        agrees(women, FirthLogistic.fit(rows, whole(grade), ones(grade.length)), 4);
    }

    @Test
    void staysFiniteWhereSuccessesAndFailuresDoNotOverlap() throws IOException {
        Published steps = Published.file("firth_logistic_complete_separation_small.json");
        double[] y = steps.data("y");
        agrees(steps, FirthLogistic.fit(rows(steps.data("x")), whole(y), ones(y.length)), 2);
    }

    @Test
    void isTheSameForRowsThatShareTheirValues() {
        double[][] apart = rows(new double[] {1, 1, 1, 2, 2, 2});
        FirthLogistic one = fit(apart, new int[] {0, 0, 1, 1, 1, 0}, ones(6));
        FirthLogistic shared = fit(rows(new double[] {1, 2}), new int[] {1, 2}, new int[] {3, 3});
        assertThat(shared.coefficients()).containsExactly(one.coefficients(), within(1e-9));
        assertThat(shared.p(1)).isCloseTo(one.p(1), within(1e-9));
    }

    @Test
    void addsHalfACountWhereThereIsOnlyAnIntercept() {
        // D. Firth, Biometrika 80 (1993), section 3.1: the estimate is log((s + 1/2) / (n - s + 1/2))
        FirthLogistic found = fit(new double[][] {{1}}, new int[] {3}, new int[] {4});
        assertThat(found.coefficients()[0]).isCloseTo(Math.log(3.5 / 1.5), within(1e-10));
        assertThat(found.chance(1)).isCloseTo(0.7, within(1e-10));
    }

    @Test
    void withholdsAnswerWhenTheRowsCannotTell() {
        assertThat(reason(rows(new double[] {1, 2}), new int[] {3, 3}, new int[] {3, 3}))
                .isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(rows(new double[] {1, 2}), new int[] {0, 1}, new int[] {1, 1}))
                .isEqualTo(Reason.TOO_FEW);
        assertThat(reason(rows(new double[] {5, 5}), new int[] {0, 3}, new int[] {3, 3}))
                .isEqualTo(Reason.DEPENDENT_COLUMNS);
        assertThat(reason(rows(new double[] {5, Double.NaN}), new int[] {0, 3}, new int[] {3, 3}))
                .isEqualTo(Reason.NOT_FINITE);
    }

    private static void agrees(Published file, Answer<FirthLogistic> answer, int columns) {
        FirthLogistic found = answer.value().orElseThrow();
        assertThat(found.penalisedLogLikelihood()).isCloseTo(file.computed("penalised_loglik"), SIX_DIGITS);
        for (int column = 0; column < columns; column++) {
            JsonNode published = file.at("computed", "coefficients", String.valueOf(column));
            assertThat(found.coefficients()[column])
                    .isCloseTo(published.path("estimate").asDouble(), SIX_DIGITS);
            assertThat(found.standardErrors()[column])
                    .isCloseTo(published.path("se").asDouble(), SIX_DIGITS);
            assertThat(found.p(column)).isCloseTo(published.path("p").asDouble(), SIX_DIGITS);
            assertThat(found.low(column))
                    .isCloseTo(published.path("profile_lower").asDouble(), within(2e-5));
            assertThat(found.high(column))
                    .isCloseTo(published.path("profile_upper").asDouble(), within(2e-5));
        }
    }

    private static double[][] rows(double[]... columns) {
        double[][] rows = new double[columns[0].length][columns.length + 1];
        for (int row = 0; row < rows.length; row++) {
            rows[row][0] = 1;
            for (int column = 0; column < columns.length; column++) {
                rows[row][column + 1] = columns[column][row];
            }
        }
        return rows;
    }

    private static int[] whole(double[] values) {
        return Arrays.stream(values).mapToInt(value -> (int) value).toArray();
    }

    private static int[] ones(int n) {
        int[] ones = new int[n];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static FirthLogistic fit(double[][] x, int[] successes, int[] totals) {
        return FirthLogistic.fit(x, successes, totals).value().orElseThrow();
    }

    private static Reason reason(double[][] x, int[] successes, int[] totals) {
        return ((Withheld<FirthLogistic>) FirthLogistic.fit(x, successes, totals)).reason();
    }
}
