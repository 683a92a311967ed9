package org.berrywatt.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerTest {

    /**
     * Cells per group that find a small, medium and large effect (f = 0.10, 0.25, 0.40) in 80 % of cases at 5 %: J. Cohen,
     * A power primer, Psychological Bulletin 112 (1992) 155-159, table 2, one-way analysis of variance (from memory; the
     * same as table 8.4.4 of his book of 1988). His tables are interpolated and rounded, so that one cell more or less is
     * the same.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 0.10, 393", "2, 0.25, 64", "2, 0.40, 26",
        "3, 0.10, 322", "3, 0.25, 52", "3, 0.40, 21",
        "4, 0.10, 274", "4, 0.25, 45", "4, 0.40, 18",
        "5, 0.10, 240", "5, 0.25, 39", "5, 0.40, 16",
    })
    void needsAsManyCellsPerGroupAsCohensTable(int groups, double f, int tabulated) {
        int needed = 2;
        while (power(groups, f, needed) < Power.WANTED) {
            needed++;
        }

        assertThat(needed).isCloseTo(tabulated, within(1));
    }

    @ParameterizedTest
    @CsvSource({"1, 3", "1, 7", "2, 14", "5, 60"})
    void findsTheWantedNoncentralityAsOftenAsWanted(int d1, int d2) {
        assertThat(Power.of(d1, d2, Power.wantedNoncentrality(d1, d2))).isCloseTo(0.8, within(1e-8));
    }

    private static double power(int groups, double f, int each) {
        return Power.of(groups - 1, groups * (each - 1), f * f * groups * each);
    }
}
