package org.berrywatt.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PivotedCholeskyTest {

    /** [[4, 2], [2, 5]] has the inverse [[5, -2], [-2, 4]]/16, by hand; so (2, 3) gives (20 - 24 + 36)/16 = 2. */
    @Test
    void givesSquaresInTheInverse() {
        assertThat(square(new double[][] {{4, 2}, {2, 5}}, 2, 3)).isCloseTo(2, within(1e-15));
    }

    /** Three deviations that sum to zero: covariance I - 1/3 has rank 2, and for such t the square is |t|², by hand. */
    @Test
    void leavesOutWhatFollowsFromTheRest() {
        double third = 1.0 / 3;
        double[][] singular = {
            {1 - third, -third, -third},
            {-third, 1 - third, -third},
            {-third, -third, 1 - third}
        };

        assertThat(PivotedCholesky.of(singular, 1e-10).rank()).isEqualTo(2);
        assertThat(square(singular, 1, 2, -3)).isCloseTo(14, within(1e-13));
    }

    @Test
    void hasNoRankWithoutSpread() {
        assertThat(PivotedCholesky.of(new double[3][3], 1e-10).rank()).isZero();
    }

    private static double square(double[][] matrix, double... t) {
        PivotedCholesky factor = PivotedCholesky.of(matrix, 1e-10);
        double[] chosen = new double[factor.rank()];
        for (int i = 0; i < chosen.length; i++) {
            chosen[i] = t[factor.pivot(i)];
        }
        double sum = 0;
        for (double part : factor.solveLower(chosen)) {
            sum += part * part;
        }
        return sum;
    }
}
