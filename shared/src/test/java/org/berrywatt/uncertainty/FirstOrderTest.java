package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.uncertainty.Published.json;
import static org.berrywatt.uncertainty.Published.number;
import static org.berrywatt.uncertainty.Published.numbers;

import java.util.List;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class FirstOrderTest {

    /**
     * JCGM 100:2008, H.1: calibration of an end gauge of 50 mm; published u = 32 nm, recomputed to more digits in the file.
     */
    @Test
    void reproducesTheEndGaugeOfTheGuide() {
        JsonNode published = json("gum_h1_end_gauge.json");
        List<Input> inputs = StreamSupport.stream(published.get("inputs").spliterator(), false)
                .map(it -> Input.normal(it.get("name").asString(), number(it, "value"), "nm", number(it, "u")))
                .toList();
        Budget budget = FirstOrder.evaluate(inputs, x -> x[0] + x[1] - x[0] * (x[3] * x[4] + x[2] * x[5]));

        JsonNode computed = published.get("computed");
        assertThat(budget.value()).isCloseTo(number(computed, "l_nm"), within(1e-6));
        assertThat(budget.standardUncertainty()).isCloseTo(number(computed, "uc_nm"), within(1e-5));
        for (Contribution part : budget.contributions()) {
            double expected =
                    number(computed.get("contributions_nm"), part.input().name());
            assertThat(part.standardUncertainty()).isCloseTo(expected, within(1e-5));
        }
    }

    /**
     * JCGM 100:2008, H.1.6: effective degrees of freedom 16.7, rounded down to 16; U99 = 2.92 · 32 nm = 93 nm, recomputed
     * unrounded in the file.
     */
    @Test
    void expandsTheEndGaugeByStudentsFactor() {
        JsonNode published = json("gum_h1_end_gauge.json");
        List<Input> inputs = StreamSupport.stream(published.get("inputs").spliterator(), false)
                .map(FirstOrderTest::withDegreesOfFreedom)
                .toList();
        Budget budget = FirstOrder.evaluate(inputs, x -> x[0] + x[1] - x[0] * (x[3] * x[4] + x[2] * x[5]));

        JsonNode computed = published.get("computed");
        assertThat(budget.effectiveDegreesOfFreedom()).isCloseTo(number(computed, "nu_eff"), within(1e-4));
        assertThat(budget.expandedUncertainty(0.99)).isCloseTo(number(computed, "U99_unrounded"), within(1e-4));
    }

    /** JCGM 100:2008, H.2: what was read together goes together; resistance, reactance, impedance. */
    @Test
    void reproducesTheImpedanceOfTheGuideWithItsCorrelations() {
        JsonNode published = json("gum_h2_impedance.json");
        double[][] readings = {
            numbers(published.get("data").get("V_volt")),
            numbers(published.get("data").get("I_ampere")),
            numbers(published.get("data").get("phi_rad"))
        };
        List<Input> inputs = List.of(mean("V", readings[0]), mean("I", readings[1]), mean("phi", readings[2]));
        Correlation together = Correlation.ofReadings(readings);
        Budget resistance = FirstOrder.evaluate(inputs, together, x -> x[0] / x[1] * Math.cos(x[2]));
        Budget reactance = FirstOrder.evaluate(inputs, together, x -> x[0] / x[1] * Math.sin(x[2]));
        Budget impedance = FirstOrder.evaluate(inputs, together, x -> x[0] / x[1]);

        JsonNode computed = published.get("computed");
        assertThat(resistance.value()).isCloseTo(number(computed, "R"), within(1e-9));
        assertThat(resistance.standardUncertainty()).isCloseTo(number(computed, "u_R"), within(1e-6));
        assertThat(reactance.standardUncertainty()).isCloseTo(number(computed, "u_X"), within(1e-6));
        assertThat(impedance.standardUncertainty()).isCloseTo(number(computed, "u_Z"), within(1e-6));
        assertThat(together.between(resistance, reactance)).isCloseTo(number(computed, "r_RX"), within(1e-5));
        assertThat(together.between(resistance, impedance)).isCloseTo(number(computed, "r_RZ"), within(1e-5));
        assertThat(together.between(reactance, impedance)).isCloseTo(number(computed, "r_XZ"), within(1e-5));
    }

    /** The same, as if each had been read alone: the file's u(R) without correlation. */
    @Test
    void wouldBeWrongAboutTheImpedanceWithoutItsCorrelations() {
        JsonNode published = json("gum_h2_impedance.json");
        List<Input> inputs = List.of(
                mean("V", numbers(published.get("data").get("V_volt"))),
                mean("I", numbers(published.get("data").get("I_ampere"))),
                mean("phi", numbers(published.get("data").get("phi_rad"))));
        Budget alone = FirstOrder.evaluate(inputs, x -> x[0] / x[1] * Math.cos(x[2]));
        assertThat(alone.standardUncertainty())
                .isCloseTo(number(published.get("computed"), "u_R_if_correlation_ignored"), within(1e-6));
    }

    /** JCGM 100:2008, 5.2.2, note 1: with r = 1 the parts add up with their signs; 3 - 2 = 1 and 3 + 2 = 5. */
    @Test
    void addsPartsOfOneCauseWithTheirSigns() {
        List<Input> inputs = List.of(
                Input.normal("a", 1, "V", 3).sharedBy("meter"),
                Input.normal("b", 1, "V", 2).sharedBy("meter"));
        assertThat(FirstOrder.evaluate(inputs, x -> x[0] - x[1]).standardUncertainty())
                .isCloseTo(1, within(1e-9));
        Budget sum = FirstOrder.evaluate(inputs, x -> x[0] + x[1]);
        assertThat(sum.standardUncertainty()).isCloseTo(5, within(1e-9));
        assertThat(sum.contributions())
                .extracting(Contribution::share)
                .satisfiesExactly(
                        a -> assertThat(a).isCloseTo(0.6, within(1e-9)),
                        b -> assertThat(b).isCloseTo(0.4, within(1e-9)));
    }

    private static Input mean(String name, double[] readings) {
        return RepeatedReadings.of(readings).input(name, "1");
    }

    private static Input withDegreesOfFreedom(JsonNode input) {
        Input known = Input.normal(input.get("name").asString(), number(input, "value"), "nm", number(input, "u"));
        return input.get("nu").isNull() ? known : known.withDegreesOfFreedom(number(input, "nu"));
    }

    /**
     * EA-4/02 M:2022, S3: calibration of a standard resistor of 10 kΩ by substitution; published 10000.178 Ω with u = 8.33 mΩ
     * (from memory), recomputed to more digits in the file.
     */
    @Test
    void reproducesTheStandardResistorWithMixedDistributions() {
        List<Input> inputs = List.of(
                Input.normal("standard", 10000.053, "Ω", 0.0025),
                Input.rectangular("drift", 0.020, "Ω", 0.010),
                Input.rectangular("standardTemperature", 0, "Ω", 0.00275),
                Input.rectangular("resistorTemperature", 0, "Ω", 0.0055),
                Input.triangular("leakage", 1, "1", 1e-6),
                Input.normal("ratio", 1.0000105, "1", 0.07e-6));
        Budget budget = FirstOrder.evaluate(inputs, x -> (x[0] + x[1] + x[2]) * x[4] * x[5] - x[3]);

        JsonNode published = json("ea402_s3_resistor.json");
        assertThat(budget.value()).isCloseTo(10000.178, within(0.0005));
        assertThat(budget.standardUncertainty() * 1e3).isCloseTo(number(published.get("computed"), "u"), within(1e-3));
        for (int i = 0; i < inputs.size(); i++) {
            double expectedMilliohm = number(published.get("inputs").get(i), "contribution");
            assertThat(budget.contributions().get(i).standardUncertainty() * 1e3)
                    .isCloseTo(expectedMilliohm, within(0.001));
        }
    }

    /** JCGM 100:2008, 5.1.6: for products and quotients the squares of the relative uncertainties add. */
    @Test
    void reproducesEfficiencyAsProductAndQuotient() {
        for (JsonNode one : json("efficiency_product_model.json").get("cases")) {
            List<Input> inputs = List.of(
                    Input.normal("P", number(one, "p_mp_W"), "W", number(one, "u_p")),
                    Input.normal("A", number(one, "area_cm2") * 1e-4, "m²", number(one, "u_area") * 1e-4),
                    Input.normal("G", number(one, "irradiance_W_per_m2"), "W/m²", number(one, "u_irradiance")));
            Budget budget = FirstOrder.evaluate(inputs, x -> x[0] / (x[1] * x[2]));
            assertThat(budget.value()).isCloseTo(number(one, "efficiency"), Percentage.withPercentage(1e-10));
            assertThat(budget.standardUncertainty())
                    .isCloseTo(number(one, "u_first_order"), Percentage.withPercentage(0.001));
        }
    }

    @Test
    void sharesOfTheVarianceAddUpToOne() {
        Budget budget = FirstOrder.evaluate(
                List.of(Input.normal("a", 2, "1", 0.3), Input.rectangular("b", 5, "1", 0.4)), x -> x[0] * x[1]);
        assertThat(budget.contributions().stream()
                        .mapToDouble(Contribution::share)
                        .sum())
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void givesNoShareWhenNothingIsUncertain() {
        Budget budget = FirstOrder.evaluate(List.of(Input.normal("a", 2, "1", 0)), x -> x[0] * x[0]);
        assertThat(budget.standardUncertainty()).isZero();
        assertThat(budget.contributions().get(0).share()).isZero();
        assertThat(budget.contributions().get(0).sensitivity()).isCloseTo(4, within(1e-6));
    }

    @Test
    void keepsSensitivityWhereAnInputIsZero() {
        Budget budget = FirstOrder.evaluate(List.of(Input.normal("offset", 0, "V", 0.001)), x -> 3 * x[0] + 1);
        assertThat(budget.contributions().get(0).sensitivity()).isCloseTo(3, within(1e-6));
    }

    @Test
    void refusesModelWithoutFiniteValue() {
        List<Input> zero = List.of(Input.normal("area", 0, "m²", 0));
        assertThatThrownBy(() -> FirstOrder.evaluate(zero, x -> 1 / x[0]))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("no finite value");
    }
}
