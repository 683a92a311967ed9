package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Below 2 % or two digits over 30 s (common practice, no source). */
class SteadinessTest {
    private static final Instant LAMP_ON = Instant.parse("2026-05-12T10:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "0.400, 0.407, true",
        "0.400, 0.409, false",
        "0.409, 0.400, false",
        "0.010, 0.012, true",
        "0.010, 0.013, false"
    })
    void standsStillWithinTwoPerCentOrTwoDigits(double before, double after, boolean steady) {
        assertThat(Steadiness.of(List.of(at(0, before), at(30, after)), 0.001))
                .hasValueSatisfying(it -> assertThat(it.steady()).isEqualTo(steady));
    }

    @Test
    void looksAtTheLastHalfMinuteOnly() {
        assertThat(Steadiness.of(List.of(at(0, 0.1), at(60, 0.400), at(75, 0.402), at(95, 0.403)), 0.001))
                .hasValueSatisfying(it -> assertThat(it.steady()).isTrue());
    }

    @Test
    void cannotTellFromReadingsLessThanHalfAMinuteApart() {
        assertThat(Steadiness.of(List.of(at(0, 0.4), at(29, 0.4)), 0.001)).isEmpty();
        assertThat(Steadiness.of(List.of(), 0.001)).isEmpty();
    }

    private static TimedValue at(long seconds, double value) {
        return new TimedValue(LAMP_ON.plusSeconds(seconds), Estimate.exact(value));
    }
}
