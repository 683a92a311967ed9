package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class AxisFitTest {

    @Test
    void reproducesTheCertifiedInterceptOfNorris() {
        // NIST StRD, linear regression, Norris: intercept -0.262323073774029, standard error 0.232818234301152
        var points = MeasuredCurves.rows("/nist/linear_Norris.csv").stream()
                .map(row -> new AxisPoint(MeasuredCurves.number(row, "x"), MeasuredCurves.number(row, "y"), 0, 0))
                .toList();
        var found = new AxisFit(points, 1000, true).atAxis();
        assertThat(found.value()).isCloseTo(-0.262323073774029, Percentage.withPercentage(1e-9));
        assertThat(found.standardUncertainty()).isCloseTo(0.232818234301152, Percentage.withPercentage(1e-8));
    }
}
