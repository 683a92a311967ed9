package org.berrywatt.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AccuracyTest {

    static Stream<Row> rows() {
        return Accuracy.rows().stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void holdsWhatTheReportSays(Row row) {
        assertThat(row.holds()).as("%s: %s", row, row.found()).isTrue();
    }
}
