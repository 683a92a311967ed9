package org.berrywatt.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SectionTest {
    private static final Row MISSED = Row.atMost("error", "a table", 1, 2, "V");

    @Test
    void isBrokenByARowThatDoesNotHold() {
        assertThat(section(MISSED).broken()).containsExactly(MISSED);
        assertThat(section(MISSED).lines()).contains("| error | a table | ≤ 1 V | 2 V | **no** |");
    }

    @Test
    void saysWhyARowMayMiss() {
        var known = MISSED.knownToMiss("the table is rounded");

        assertThat(section(known).broken()).isEmpty();
        assertThat(section(known).lines()).contains("| error | a table | ≤ 1 V | 2 V | **no**: the table is rounded |");
    }

    @Test
    void isBrokenByWhatWasNotMeasured() {
        assertThat(section(Row.atLeast("ratio", "this machine", 1, Double.NaN, ""))
                        .broken())
                .hasSize(1);
    }

    private static Section section(Row row) {
        return new Section("Heading", "Remark.", List.of(row));
    }
}
