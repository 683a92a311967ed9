package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;

class MannWhitneyTest {

    @Test
    void agreesWithPublishedShiftAndInterval() throws IOException {
        // M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods (1973), p. 69: permeability, 10 against 5
        Published membranes = Published.file("mann_whitney_permeability.json");
        MannWhitney found = MannWhitney.of(membranes.data("first"), membranes.data("second"))
                .value()
                .orElseThrow();
        assertThat(found.u()).isEqualTo(membranes.computed("u_first"));
        assertThat(found.p()).isCloseTo(membranes.computed("p_two_sided_exact"), within(1e-14));
        assertThat(found.shift()).isCloseTo(membranes.computed("hodges_lehmann"), within(1e-12));
        assertThat(new double[] {found.low(), found.high()})
                .containsExactly(Published.numbers(membranes.at("computed", "ci95_exact")), within(1e-12));
    }

    @Test
    void countsTiesHalf() throws IOException {
        // E. W. Crampton, Journal of Nutrition 33 (1947): length of teeth, orange juice against vitamin C
        Published teeth = Published.file("mann_whitney_ties_toothgrowth.json");
        MannWhitney found = MannWhitney.of(teeth.data("first"), teeth.data("second"))
                .value()
                .orElseThrow();
        assertThat(found.u()).isEqualTo(teeth.computed("u_first"));
        assertThat(found.p()).isCloseTo(teeth.computed("p_two_sided_normal_no_continuity"), within(1e-12));
    }

    @Test
    void withholdsAnswerWhenGroupsCannotTell() {
        Answer<MannWhitney> none = MannWhitney.of(new double[] {1, 2, 3}, new double[0]);
        assertThat(((Withheld<MannWhitney>) none).reason()).isEqualTo(Reason.ONE_GROUP);
        Answer<MannWhitney> many = MannWhitney.of(new double[2000], new double[2000]);
        assertThat(((Withheld<MannWhitney>) many).reason()).isEqualTo(Reason.TOO_MANY);
    }
}
