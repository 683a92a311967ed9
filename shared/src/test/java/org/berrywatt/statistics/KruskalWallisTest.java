package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;

class KruskalWallisTest {

    @Test
    void agreesWithPublishedTestWithTies() throws IOException {
        // J. M. Chambers and others, Graphical Methods for Data Analysis (1983): ozone by month in New York
        Published air = Published.file("kruskal_wallis_airquality.json");
        KruskalWallis found = given(byMonth(air));
        assertThat(found.h()).isCloseTo(air.computed("h_tie_corrected"), within(1e-12));
        assertThat(found.degreesOfFreedom()).isEqualTo(4);
        assertThat(found.p()).isCloseTo(air.computed("p"), within(1e-17));
        assertThat(found.evaluation()).isEqualTo(Evaluation.APPROXIMATE);
    }

    @Test
    void isTheExactRankSumTestForTwoSmallGroups() throws IOException {
        // M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973), p. 69: permeability, 10 against 5
        Published membranes = Published.file("mann_whitney_permeability.json");
        KruskalWallis found = given(List.of(membranes.data("first"), membranes.data("second")));
        assertThat(found.p()).isCloseTo(membranes.computed("p_two_sided_exact"), within(1e-14));
        assertThat(found.evaluation()).isEqualTo(Evaluation.EXACT);
    }

    @Test
    void neverReachesFivePercentWithThreeAgainstThree() {
        // 2 of the 20 deals of six into two threes are extreme, by counting
        KruskalWallis found = given(List.of(new double[] {1, 2, 3}, new double[] {4, 5, 6}));
        assertThat(found.p()).isCloseTo(0.1, within(1e-15));
    }

    @Test
    void passesOverEmptyGroups() {
        KruskalWallis found = given(List.of(new double[] {1, 2}, new double[] {}, new double[] {3}));
        assertThat(found.degreesOfFreedom()).isEqualTo(1);
    }

    @Test
    void withholdsAnswerWhenGroupsCannotTell() {
        assertThat(reason(new double[] {1, 2, 3}, new double[] {})).isEqualTo(Reason.ONE_GROUP);
        assertThat(reason(new double[] {1}, new double[] {2})).isEqualTo(Reason.TOO_FEW);
        assertThat(reason(new double[] {4, 4}, new double[] {4, 4})).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new double[] {1, Double.NaN}, new double[] {2, 3})).isEqualTo(Reason.NOT_FINITE);
    }

    private static KruskalWallis given(List<double[]> groups) {
        return KruskalWallis.of(groups).value().orElseThrow();
    }

    private static Reason reason(double[] first, double[] second) {
        return ((Withheld<KruskalWallis>) KruskalWallis.of(List.of(first, second))).reason();
    }

    private static List<double[]> byMonth(Published air) {
        double[] months = air.data("month");
        double[] ozone = air.data("ozone");
        return IntStream.rangeClosed(5, 9)
                .mapToObj(month -> IntStream.range(0, months.length)
                        .filter(i -> months[i] == month)
                        .mapToDouble(i -> ozone[i])
                        .toArray())
                .toList();
    }
}
