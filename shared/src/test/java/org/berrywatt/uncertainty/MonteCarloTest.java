package org.berrywatt.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.uncertainty.Published.json;
import static org.berrywatt.uncertainty.Published.number;
import static org.berrywatt.uncertainty.Published.numbers;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

class MonteCarloTest {
    private static final double HALF_WIDTH = Math.sqrt(3);

    private final Deviates deviates = new Deviates(2008, 1_000_000);

    /** JCGM 101:2008, 9.2.2: four normal inputs, u = 2.0, interval ±3.92. */
    @Test
    void reproducesTheSumOfFourNormalInputs() {
        Sample sum = evaluate(inputs(i -> Input.normal("x" + i, 0, "1", 1)), MonteCarloTest::sum);
        assertThat(sum.mean()).isCloseTo(0, within(0.01));
        assertThat(sum.standardDeviation()).isCloseTo(2.0, within(0.01));
        isCloseTo(sum.symmetricInterval(0.95), -3.92, 3.92, 0.02);
    }

    /** JCGM 101:2008, 9.2.3: four rectangular inputs of the same u, interval ±3.88. */
    @Test
    void reproducesTheSumOfFourRectangularInputs() {
        Sample sum = evaluate(inputs(i -> Input.rectangular("x" + i, 0, "1", HALF_WIDTH)), MonteCarloTest::sum);
        assertThat(sum.standardDeviation()).isCloseTo(2.0, within(0.01));
        isCloseTo(sum.symmetricInterval(0.95), -3.88, 3.88, 0.02);
    }

    /** JCGM 101:2008, 9.2.4: as before, one input ten times wider, where first order's ±19.9 is too wide by 2.9. */
    @Test
    void reproducesTheSumWithOneWideRectangularInput() {
        List<Input> inputs = inputs(i -> Input.rectangular("x" + i, 0, "1", i < 3 ? HALF_WIDTH : 10 * HALF_WIDTH));
        Sample sum = evaluate(inputs, MonteCarloTest::sum);
        double exact = number(
                json("jcgm101_9_2_additive_model.json").get("cases").get(2).get("exact"), "half_width95");
        assertThat(sum.standardDeviation()).isCloseTo(10.1, within(0.06));
        isCloseTo(sum.symmetricInterval(0.95), -exact, exact, 0.04);
        isCloseTo(sum.shortestInterval(0.95), -17.0, 17.0, 0.2);
        assertThat(sum.shortestInterval(0.95).width()).isCloseTo(2 * exact, within(0.05));
    }

    /**
     * JCGM 101:2008, 9.3: calibration of a weight, a product of inputs that first order cannot see (0.0539 instead of 0.0754).
     * The printed place of the shortest interval was one run's; its width and the rest are recomputed in the file.
     */
    @Test
    void reproducesTheMassCalibrationThatFirstOrderMisses() {
        Sample deviation = evaluate(MassCalibration.INPUTS, MassCalibration::deviationMg);
        JsonNode computed = json("jcgm101_9_3_mass_calibration.json").get("computed");
        double[] symmetric = numbers(computed.get("symmetric_interval95"));
        assertThat(deviation.mean()).isCloseTo(1.234, within(0.0005));
        assertThat(deviation.standardDeviation()).isCloseTo(0.0754, within(0.0003));
        isCloseTo(deviation.symmetricInterval(0.95), symmetric[0], symmetric[1], 0.0015);
        assertThat(deviation.shortestInterval(0.95).width()).isCloseTo(1.3825 - 1.0834, within(0.002));
        Budget first = FirstOrder.evaluate(MassCalibration.INPUTS, MassCalibration::deviationMg);
        assertThat(first.standardUncertainty()).isCloseTo(0.0539, within(5e-5));
    }

    /** JCGM 101:2008, 7.9 and table 8: numerical tolerance 0.0005 mg for two digits of u = 0.075 mg. */
    @Test
    void stopsOnceTheMassCalibrationStandsStill() {
        double tolerance = MonteCarlo.tolerance(0.075, 2);
        assertThat(tolerance).isCloseTo(0.0005, within(1e-12));
        Sample deviation = MonteCarlo.adaptive(MassCalibration.INPUTS, MassCalibration::deviationMg, 1, tolerance);
        assertThat(deviation.standardDeviation()).isCloseTo(0.0754, within(tolerance));
        assertThat(deviation.mean()).isCloseTo(1.2340, within(tolerance));
        // the Supplement's own runs needed some 700 000 trials
        assertThat(deviation.size()).isBetween(200_000, 2_000_000);
    }

    @Test
    void refusesToRunForEverOnAResultThatNeverSettles() {
        List<Input> twoReadings = List.of(RepeatedReadings.of(1, 2).input("x", "V"));
        assertThatThrownBy(() -> MonteCarlo.adaptive(twoReadings, x -> x[0], 1, 0.001))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("allow a larger tolerance");
        assertThatThrownBy(() -> MonteCarlo.adaptive(twoReadings, x -> x[0], 1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("tolerance must lie in (0, infinity), not NaN");
    }

    /** Efficiency P / (G A) with a divisor known to 10 %: four million draws of another generator, in the file. */
    @Test
    void reproducesTheSkewOfAQuotient() {
        for (JsonNode one : json("efficiency_product_model.json").get("cases")) {
            List<Input> inputs = List.of(
                    Input.normal("P", number(one, "p_mp_W"), "W", number(one, "u_p")),
                    Input.normal("A", number(one, "area_cm2") * 1e-4, "m²", number(one, "u_area") * 1e-4),
                    Input.normal("G", number(one, "irradiance_W_per_m2"), "W/m²", number(one, "u_irradiance")));
            Sample efficiency = evaluate(inputs, x -> x[0] / (x[1] * x[2]));
            double tolerance = 0.01 * number(one, "u_first_order");
            assertThat(efficiency.mean()).isCloseTo(number(one, "monte_carlo_mean"), within(tolerance));
            assertThat(efficiency.standardDeviation())
                    .isCloseTo(number(one, "monte_carlo_sd"), Percentage.withPercentage(0.5));
            isCloseTo(
                    efficiency.symmetricInterval(0.95),
                    number(one, "monte_carlo_q025"),
                    number(one, "monte_carlo_q975"),
                    tolerance);
        }
    }

    /** JCGM 100:2008, H.2: the correlated readings of resistance, now drawn (JCGM 101:2008, 6.4.8). */
    @Test
    void reproducesTheCorrelatedImpedance() {
        JsonNode published = json("gum_h2_impedance.json");
        double[][] readings = {
            numbers(published.get("data").get("V_volt")),
            numbers(published.get("data").get("I_ampere")),
            numbers(published.get("data").get("phi_rad"))
        };
        List<Input> inputs = IntStream.range(0, 3)
                .mapToObj(i -> RepeatedReadings.of(readings[i]))
                .map(it -> Input.normal("x" + it.mean(), it.mean(), "1", it.standardUncertainty()))
                .toList();
        Correlation together = Correlation.ofReadings(readings);
        Sample resistance = MonteCarlo.evaluate(inputs, together, x -> x[0] / x[1] * Math.cos(x[2]), deviates, "gauge");
        Sample reactance = MonteCarlo.evaluate(inputs, together, x -> x[0] / x[1] * Math.sin(x[2]), deviates, "gauge");
        assertThat(resistance.mean()).isCloseTo(127.732, within(0.0005));
        assertThat(resistance.standardDeviation()).isCloseTo(0.0711, within(3e-4));
        assertThat(reactance.standardDeviation()).isCloseTo(0.2956, within(1e-3));
    }

    /** JCGM 101:2008, 8: where the model is linear and all is normal, both evaluations agree. */
    @Test
    void agreesWithFirstOrderOnALinearModelWithSharedCauses() {
        List<Input> inputs = List.of(
                Input.normal("a", 5, "V", 3).sharedBy("meter"),
                Input.normal("b", 2, "V", 2).sharedBy("meter"),
                Input.normal("c", 1, "V", 1));
        ToDoubleFunction<double[]> model = x -> x[0] - x[1] + 2 * x[2];
        assertThat(evaluate(inputs, model).standardDeviation())
                .isCloseTo(FirstOrder.evaluate(inputs, model).standardUncertainty(), Percentage.withPercentage(0.5));
    }

    @Test
    void movesTwoResultsOfOneCauseTogetherAndAllOthersApart() {
        List<Input> shared = List.of(Input.normal("light", 1, "1", 0.1).sharedBy("station.yard"));
        List<Input> own = List.of(Input.normal("light", 1, "1", 0.1));
        assertThat(MonteCarlo.trials(shared, x -> x[0], deviates, "one"))
                .isEqualTo(MonteCarlo.trials(shared, x -> x[0], deviates, "other"));
        assertThat(MonteCarlo.trials(own, x -> x[0], deviates, "one"))
                .isNotEqualTo(MonteCarlo.trials(own, x -> x[0], deviates, "other"))
                .isEqualTo(MonteCarlo.trials(own, x -> x[0], deviates, "one"));
    }

    @ParameterizedTest
    @EnumSource(names = "STUDENT", mode = EnumSource.Mode.EXCLUDE)
    void drawsEveryShapeWithItsStandardUncertainty(Shape shape) {
        Input input = new Input("x", 7, "V", 0.3, shape, Double.POSITIVE_INFINITY, null);
        Sample sample = evaluate(List.of(input), x -> x[0]);
        assertThat(sample.mean()).isCloseTo(7, within(0.002));
        assertThat(sample.standardDeviation()).isCloseTo(0.3, within(0.001));
    }

    /** JCGM 101:2008, 6.4.9: the mean of few readings is Student's t scaled by s / √n; JCGM 100, table G.2: t95(4) = 2.78. */
    @Test
    void drawsTheMeanOfFewReadingsAsStudentsT() {
        RepeatedReadings readings = RepeatedReadings.of(502, 498, 507, 495, 500);
        Sample sample = evaluate(List.of(readings.input("x", "mV")), x -> x[0]);
        JsonNode published = json("type_a_few_readings.json").get("cases").get(2);
        double half = number(published, "U95_student");
        isCloseTo(sample.symmetricInterval(0.95), 500.4 - half, 500.4 + half, 0.05);
        assertThat(sample.standardDeviation()).isCloseTo(number(published, "u_scaled_t"), within(0.03));
    }

    @Test
    void refusesModelWithoutFiniteValueInSomeTrial() {
        List<Input> aroundZero = List.of(Input.normal("x", 0, "1", 1));
        assertThatThrownBy(() -> evaluate(aroundZero, x -> Math.log(x[0])))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("no finite value");
    }

    private Sample evaluate(List<Input> inputs, ToDoubleFunction<double[]> model) {
        return MonteCarlo.evaluate(inputs, model, deviates, "result");
    }

    private static List<Input> inputs(IntFunction<Input> input) {
        return IntStream.range(0, 4).mapToObj(input).toList();
    }

    private static double sum(double[] x) {
        return x[0] + x[1] + x[2] + x[3];
    }

    private static void isCloseTo(Interval interval, double low, double high, double tolerance) {
        assertThat(interval.low()).isCloseTo(low, within(tolerance));
        assertThat(interval.high()).isCloseTo(high, within(tolerance));
    }
}
