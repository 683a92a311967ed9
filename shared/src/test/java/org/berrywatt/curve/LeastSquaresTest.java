package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LeastSquaresTest {

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.CertifiedFit#all")
    void findsTheCertifiedParametersFromBothStarts(CertifiedFit fit) {
        assertThat(fit.digitsOfEstimates()).isGreaterThanOrEqualTo(fit.wanted());
    }

    @ParameterizedTest
    @MethodSource("org.berrywatt.curve.CertifiedFit#all")
    void findsTheCertifiedStandardErrorsFromBothStarts(CertifiedFit fit) {
        assertThat(fit.digitsOfStandardErrors()).isGreaterThanOrEqualTo(fit.wanted());
    }
}
