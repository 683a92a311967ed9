package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.berrywatt.light.Uniformity.Grade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UniformityTest {

    @ParameterizedTest
    @CsvSource({
        // IEC 60904-9: (max - min)/(max + min), classes A 2 %, B 5 %, C 10 %, A+ 1 % (2020); worked by hand
        "100, 82,   0.0989, C",
        "100, 98.1, 0.0096, A_PLUS",
        "100, 96.1, 0.0199, A",
        "100, 95.9, 0.0209, B",
        "100, 90.5, 0.0499, B",
        "100, 80,   0.1111, NONE"
    })
    void gradesASpotByTheStandard(double max, double min, double nonUniformity, Grade grade) {
        var uniformity = Uniformity.of(List.of(min, max, (min + max) / 2));
        assertThat(uniformity.nonUniformity()).isCloseTo(nonUniformity, within(5e-5));
        assertThat(uniformity.grade()).isEqualTo(grade);
    }

    @Test
    void becomesTheUncertaintyOfAnUnknownPlace() {
        // JCGM 100:2008, 4.3.7: u = a/√3
        assertThat(Uniformity.of(List.of(90.0, 110.0)).relativeUncertainty())
                .isCloseTo(0.1 / Math.sqrt(3), within(1e-12));
    }

    @Test
    void doesNotTrustAGridBeyondTheSizeOfTheMetersHead() {
        // 1 %: common practice, no source
        assertThat(Uniformity.of(List.of(500.0, 500.0)).relativeUncertainty()).isEqualTo(0.01);
    }

    @Test
    void findsAnEvenSpotEven() {
        assertThat(Uniformity.of(List.of(500.0, 500.0)).grade()).isEqualTo(Grade.A_PLUS);
    }

    @Test
    void needsTwoPlaces() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uniformity.of(List.of(500.0)))
                .withMessage("uniformity needs readings at two places or more, not 1");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAPlaceWithoutLight(double reading) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Uniformity.of(List.of(500.0, reading)))
                .withMessageContaining("(0, ∞)");
    }
}
