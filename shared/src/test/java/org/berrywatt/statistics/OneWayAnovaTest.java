package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class OneWayAnovaTest {

    /** NIST/ITL Statistical Reference Datasets, analysis of variance; the last ones keep few digits in a double at all. */
    @ParameterizedTest
    @CsvSource({"SiRstv, 12", "SmLs01, 14", "SmLs03, 13", "SmLs04, 9", "SmLs05, 9", "SmLs07, 3", "SmLs08, 3"})
    void agreesWithCertifiedAnalysis(String name, int digits) throws IOException {
        List<double[]> rows = LinearModelTest.Nist.rows("anova_" + name);
        JsonNode certified = LinearModelTest.Nist.certified("one_way_anova", name);
        int groups = (int) rows.stream().mapToDouble(row -> row[0]).max().orElseThrow();
        OneWayAnova found = given(IntStream.rangeClosed(1, groups)
                .mapToObj(group -> rows.stream()
                        .filter(row -> row[0] == group)
                        .mapToDouble(row -> row[1])
                        .toArray())
                .toList());
        LinearModelTest.Nist.agrees(
                new double[] {found.squaresBetween(), found.squaresWithin(), found.f()},
                new double[] {
                    Published.number(certified.path("ss_between")),
                    Published.number(certified.path("ss_within")),
                    Published.number(certified.path("f"))
                },
                digits);
        assertThat(found.degreesWithin()).isEqualTo(certified.path("df_within").asInt());
    }

    /**
     * A. J. Dobson, An Introduction to Statistical Modelling (1983): dried weight of plants, three treatments. E. W. Crampton, Journal
     * of Nutrition 33 (1947) 491-504: tooth growth at three doses, where p is as small as 1e-15.
     */
    @ParameterizedTest
    @CsvSource({"group_comparison_plantgrowth, weight", "group_comparison_toothgrowth_dose, y"})
    void agreesWithPublishedComparisons(String name, String outcome) throws IOException {
        Published published = Published.file(name + ".json");
        double[] values = published.data(outcome);
        int[] groups = published.codes("group");
        OneWayAnova found = given(IntStream.range(0, 3)
                .mapToObj(group -> IntStream.range(0, values.length)
                        .filter(i -> groups[i] == group)
                        .mapToDouble(i -> values[i])
                        .toArray())
                .toList());
        double p = published.at("computed", "anova", "p").asDouble();
        assertThat(found.f()).isCloseTo(published.at("computed", "anova", "f").asDouble(), within(1e-11));
        assertThat(found.p()).isCloseTo(p, within(1e-9 * p));
    }

    @Test
    void withholdsAnswerWhenGroupsCannotTell() {
        assertThat(reason(new double[] {1, 2}, new double[] {})).isEqualTo(Reason.ONE_GROUP);
        assertThat(reason(new double[] {1}, new double[] {2})).isEqualTo(Reason.TOO_FEW);
        assertThat(reason(new double[] {1, 1}, new double[] {2, 2})).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new double[] {1, Double.NaN}, new double[] {2, 2})).isEqualTo(Reason.NOT_FINITE);
    }

    private static OneWayAnova given(List<double[]> groups) {
        return OneWayAnova.of(groups).value().orElseThrow();
    }

    private static Reason reason(double[] first, double[] second) {
        return ((Withheld<OneWayAnova>) OneWayAnova.of(List.of(first, second))).reason();
    }
}
