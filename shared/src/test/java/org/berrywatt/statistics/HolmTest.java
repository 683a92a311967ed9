package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HolmTest {

    /** Y. Benjamini and Y. Hochberg, Journal of the Royal Statistical Society B 57 (1995), section 3.2; a textbook four. */
    @ParameterizedTest
    @ValueSource(strings = {"multiple_testing_bh1995.json", "multiple_testing_holm_four.json"})
    void agreesWithPublishedAdjustment(String name) throws IOException {
        Published file = Published.file(name);
        assertThat(Holm.adjust(Published.numbers(file.at("p"))))
                .containsExactly(Published.numbers(file.at("computed", "holm")), within(1e-14));
    }

    @Test
    void adjustsNothingWithoutTests() {
        assertThat(Holm.adjust()).isEmpty();
    }

    @Test
    void refusesWhatIsNoProbability() {
        assertThatThrownBy(() -> Holm.adjust(0.1, Double.NaN)).hasMessage("p must lie in [0, 1], got NaN");
    }
}
