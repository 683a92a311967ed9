package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Arrays;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** How closely parameters go together. */
class AssociationTest {

    @Test
    void findsCramersVOfAPublishedTable() throws IOException {
        // G. G. Koch and S. Edwards (1988): arthritis, treatment by improvement
        JsonNode trial = Published.file("cramers_v_arthritis.json").at("computed");
        assertThat(CramersV.of(new int[][] {{29, 7, 7}, {13, 7, 21}}))
                .isCloseTo(trial.path("cramers_v").asDouble(), within(1e-13));
    }

    @Test
    void runsFromNothingToAll() {
        assertThat(CramersV.of(new int[][] {{3, 0}, {0, 5}})).isEqualTo(1);
        assertThat(CramersV.of(new int[][] {{2, 2}, {3, 3}})).isZero();
        assertThat(CramersV.of(new int[][] {{2, 0}, {3, 0}})).isZero();
        assertThat(CramersV.of(new int[0][])).isZero();
    }

    @Test
    void findsPublishedVarianceInflation() throws IOException {
        // O. D. Duncan (1961), prestige of 45 occupations; J. Fox and S. Weisberg, An R Companion to Applied Regression
        Published jobs = Published.file("gvif_duncan.json");
        int[] types = jobs.codes("type");
        double[][] rows = new double[types.length][4];
        for (int row = 0; row < rows.length; row++) {
            rows[row] = new double[] {
                jobs.data("income")[row], jobs.data("education")[row], types[row] == 1 ? 1 : 0, types[row] == 2 ? 1 : 0
            };
        }
        double[][] correlations =
                new PearsonsCorrelation(rows).getCorrelationMatrix().getData();
        double[] found = {
            Gvif.of(correlations, 0).orElseThrow(),
            Gvif.of(correlations, 1).orElseThrow(),
            Gvif.of(correlations, 2, 3).orElseThrow()
        };
        double[] published = new double[3];
        Arrays.setAll(
                published, i -> jobs.at("computed", String.valueOf(i), "gvif").asDouble());
        assertThat(found).containsExactly(published, within(1e-9));
    }

    @Test
    void hasNoInflationWhereColumnsDependOnEachOther() {
        assertThat(Gvif.of(new double[][] {{1, 1}, {1, 1}}, 0)).isEmpty();
        assertThat(Gvif.of(new double[][] {{1}}, 0)).hasValue(1);
    }

    @Test
    void countsIndependentColumns() {
        // the third is the sum of the first two
        double[][] products = {{2, 0, 2}, {0, 3, 3}, {2, 3, 5}};
        PivotedRank found = new PivotedRank(products, 3, 1e-10);
        assertThat(found.rank()).isEqualTo(2);
        assertThat(found.adds(1)).isTrue();
        assertThat(found.adds(2)).isFalse();
    }
}
