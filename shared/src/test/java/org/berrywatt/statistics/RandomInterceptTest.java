package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.assertj.core.data.Percentage;
import org.berrywatt.statistics.Answer.Reason;
import org.berrywatt.statistics.Answer.Withheld;
import org.junit.jupiter.api.Test;

/** Expected values are those of the files' block {@code high_precision}: the same problem solved with 50 digits. */
class RandomInterceptTest {

    private static final Percentage SIX_DIGITS = Percentage.withPercentage(1e-4);

    @Test
    void findsBatchesOfDyestuff() throws IOException {
        // O. L. Davies and P. L. Goldsmith, Statistical Methods in Research and Production (1972), table 6.3
        Published file = Published.file("random_effects_dyestuff.json");
        agrees(file, fit(new double[0][], file.data("Yield"), file.codes("Batch")));
    }

    @Test
    void findsNoVarianceWhereBatchesDifferLessThanChance() throws IOException {
        // G. E. P. Box and G. C. Tiao, Bayesian Inference in Statistical Analysis (1973), section 5.1.2
        Published file = Published.file("random_effects_dyestuff2_zero.json");
        RandomIntercept found = fit(new double[0][], file.data("Yield"), file.codes("Batch"));
        assertThat(found.groupVariance()).isZero();
        agrees(file, found);
    }

    @Test
    void takesBatchesOfUnequalSize() throws IOException {
        Published file = Published.file("random_effects_dyestuff_unbalanced.json");
        agrees(file, fit(new double[0][], file.data("Yield"), file.codes("Batch")));
    }

    @Test
    void separatesStoolsFromPeople() throws IOException {
        // J. C. Pinheiro and D. M. Bates, Mixed-Effects Models in S and S-PLUS (2000), section 1.2
        Published file = Published.file("mixed_model_ergostool.json");
        int[] stools = file.codes("Type");
        double[][] columns = new double[3][stools.length];
        for (int row = 0; row < stools.length; row++) {
            if (stools[row] > 0) {
                columns[stools[row] - 1][row] = 1;
            }
        }
        agrees(file, fit(columns, file.data("effort"), file.codes("Subject")));
    }

    @Test
    void separatesDaysFromPeople() throws IOException {
        // G. Belenky and others, Journal of Sleep Research 12 (2003) 1-12: reaction times, 18 people, 10 days
        Published file = Published.file("mixed_model_sleepstudy_intercept.json");
        agrees(file, fit(new double[][] {file.data("Days")}, file.data("Reaction"), file.codes("Subject")));
    }

    @Test
    void withholdsAnswerWhenTheRowsCannotTell() {
        double[] y = {1, 2, 3, 4};
        assertThat(reason(new double[][] {{1, 2, 2, 1}}, y, 0, 0, 0, 0)).isEqualTo(Reason.ONE_GROUP);
        assertThat(reason(new double[][] {{1, 1, 1, 1}}, y, 0, 0, 1, 1)).isEqualTo(Reason.DEPENDENT_COLUMNS);
        assertThat(reason(new double[][] {{1, 0, 1, 0}, {0, 1, 0, 1}}, y, 0, 0, 1, 1))
                .isEqualTo(Reason.DEPENDENT_COLUMNS);
        assertThat(reason(new double[][] {{1, 2, 3, 4}}, y, 0, 0, 1, 1)).isEqualTo(Reason.ALL_EQUAL);
        assertThat(reason(new double[0][], new double[] {1}, 0)).isEqualTo(Reason.TOO_FEW);
        assertThat(reason(new double[0][], new double[] {1, Double.NaN}, 0, 1)).isEqualTo(Reason.NOT_FINITE);
    }

    private static void agrees(Published file, RandomIntercept found) {
        double group = Published.number(file.at("high_precision", "variance_group"));
        double scale = Math.max(group, Published.number(file.at("high_precision", "variance_residual")));
        assertThat(found.groupVariance()).isCloseTo(group, within(1e-6 * (group == 0 ? scale : group)));
        assertThat(found.residualVariance())
                .isCloseTo(Published.number(file.at("high_precision", "variance_residual")), SIX_DIGITS);
        assertThat(found.criterion())
                .isCloseTo(Published.number(file.at("high_precision", "reml_criterion")), within(1e-9));
        double[] fixed = Published.numbers(file.at("high_precision", "fixed"));
        assertThat(found.coefficients()).containsExactly(fixed, within(1e-9 * Math.abs(fixed[0])));
        assertThat(found.standardErrors())
                .containsExactly(Published.numbers(file.at("high_precision", "fixed_se")), within(1e-7 * fixed[0]));
    }

    private static RandomIntercept fit(double[][] columns, double[] y, int[] groups) {
        return RandomIntercept.fit(columns, y, groups).value().orElseThrow();
    }

    private static Reason reason(double[][] columns, double[] y, int... groups) {
        return ((Withheld<RandomIntercept>) RandomIntercept.fit(columns, y, groups)).reason();
    }
}
