package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;

class SpearmanTest {

    @Test
    void findsExactProbabilityOfFewPairs() throws IOException {
        // M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973), p. 187: canned tuna
        Published tuna = Published.file("rank_correlation_tuna.json");
        Spearman found = given(tuna.data("x"), tuna.data("y"));
        assertThat(found.rho()).isCloseTo(tuna.computed("spearman_rho"), within(1e-15));
        assertThat(found.p()).isCloseTo(tuna.computed("spearman_p_exact"), within(1e-15));
        assertThat(found.evaluation()).isEqualTo(Evaluation.EXACT);
    }

    @Test
    void agreesWithPublishedCorrelationWithTies() throws IOException {
        // H. V. Henderson and P. F. Velleman, Biometrics 37 (1981): weight and miles per gallon of 32 cars
        Published cars = Published.file("rank_correlation_ties_mtcars.json");
        Spearman found = given(cars.data("x"), cars.data("y"));
        assertThat(found.rho()).isCloseTo(cars.computed("spearman_rho"), within(1e-14));
        assertThat(found.p()).isCloseTo(cars.computed("spearman_p_t"), within(1e-22));
        assertThat(found.evaluation()).isEqualTo(Evaluation.APPROXIMATE);
    }

    @Test
    void givesPerfectOrderOfFourItsExactProbability() {
        // 2 of the 4! = 24 orders are perfect: 1/12 by counting
        Spearman found = given(new double[] {1, 2, 3, 4}, new double[] {10, 20, 30, 40});
        assertThat(found.rho()).isEqualTo(1);
        assertThat(found.p()).isCloseTo(1.0 / 12, within(1e-15));
    }

    @Test
    void neverCallsPerfectOrderOfManyImpossibleByChance() {
        // 2 of 10! = 3628800 orders are perfect, by counting
        double[] ten = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
        assertThat(given(ten, ten).p()).isCloseTo(2 / 3628800.0, within(1e-18));
    }

    @Test
    void withholdsAnswerWhenPairsCannotTell() {
        assertThat(reason(new double[] {1, 2}, new double[] {3, 4})).isEqualTo(Reason.TOO_FEW);
        assertThat(reason(new double[] {7, 7, 7}, new double[] {1, 2, 3})).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new double[] {1, 2, 3}, new double[] {5, 5, 5})).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new double[] {1, 2, Double.NaN}, new double[] {1, 2, 3}))
                .isEqualTo(Reason.NOT_FINITE);
        assertThat(reason(new double[] {}, new double[] {})).isEqualTo(Reason.TOO_FEW);
    }

    @Test
    void refusesPairsThatDoNotMatch() {
        assertThatThrownBy(() -> Spearman.of(new double[] {1, 2, 3}, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("pairs need as many x as y, got 3 and 1");
    }

    private static Spearman given(double[] x, double[] y) {
        return Spearman.of(x, y).value().orElseThrow();
    }

    private static Reason reason(double[] x, double[] y) {
        return ((Withheld<Spearman>) Spearman.of(x, y)).reason();
    }
}
