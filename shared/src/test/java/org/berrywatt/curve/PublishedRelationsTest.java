package org.berrywatt.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Relations of others, each file naming its source and how it was checked. */
class PublishedRelationsTest {
    private static final double ROOM_C = 25;

    @Test
    void findsTheKeyPointsOfTheModuleWhoseParametersWerePublished() {
        // De Soto, Klein, Beckman 2006: five parameters of a 60-cell module, key points recomputed in the file
        var example = json("de_soto_five_parameter.json").get("fit_example");
        var parameters = example.get("published_pvlib");
        var module = new Diode(
                number(parameters, "I_L_ref"),
                number(parameters, "I_o_ref"),
                number(parameters, "a_ref") / ThermalVoltage.atCelsius(ROOM_C),
                number(parameters, "R_s"),
                number(parameters, "R_sh_ref"),
                ROOM_C);
        var points = example.get("computed_key_points_from_published_parameters");
        assertRelative(module.shortCircuitCurrentA(), number(points, "i_sc"), 1e-12);
        assertRelative(module.openCircuitVoltageV(), number(points, "v_oc"), 1e-12);
        assertRelative(module.maximumPower().voltageV(), number(points, "v_mp"), 1e-9);
        assertRelative(module.maximumPower().currentA(), number(points, "i_mp"), 1e-9);
        // the data sheet that the parameters were fitted to: 31.0 V, 8.71 A
        assertRelative(module.maximumPower().powerW(), 31.0 * 8.71, 1e-4);
    }

    static Stream<JsonNode> fillFactors() {
        return StreamSupport.stream(
                json("fill_factor_approximations.json").get("rows").spliterator(), false);
    }

    @ParameterizedTest
    @MethodSource("fillFactors")
    void findsTheExactFillFactorOfEveryNormalisedCell(JsonNode row) {
        // rows by voc = Voc/(n kT/q), rs = Rs Isc/Voc, rsh = Rsh Isc/Voc: 40 digits, beside Green's approximations
        assertRelative(
                ofOneVoltAndAmpere(number(row, "voc"), number(row, "rs"), shunt(row))
                        .maximumPower()
                        .powerW(),
                number(row, "exact"),
                1e-11);
    }

    @Test
    void liftsTheVoltageLikeTheLogarithmOfProcedureTwo() {
        // IEC 60891 procedure 2 (2009 form, equations from memory) without temperature: Voc2 = Voc1 (1 + a ln(G2/G1)),
        // where a Voc1 stands for n kT/q
        var example =
                json("iec60891_translation.json").get("procedure_1_and_2_cases").get(1);
        var measuredV = number(example, "v_oc1");
        var ideality = number(example, "a") * measuredV / ThermalVoltage.atCelsius(ROOM_C);
        var translated = example.get("procedure2_out").get(5);
        assertThat(new OpenCircuitLaw(ideality, 0, ROOM_C)
                        .voltageV(measuredV, number(example, "G2") / number(example, "G1")))
                .isCloseTo(Double.parseDouble(translated.get(0).asString()), within(1e-7));
    }

    /** The cell with Voc = 1 V and Isc = 1 A: both conditions are linear in Iph and I0. */
    private static Diode ofOneVoltAndAmpere(double voc, double rs, double rsh) {
        var saturationA = (1 - (1 - rs) / rsh) / (Math.expm1(voc) - Math.expm1(rs * voc));
        var photocurrentA = saturationA * Math.expm1(voc) + 1 / rsh;
        var ideality = 1 / voc / ThermalVoltage.atCelsius(ROOM_C);
        return new Diode(photocurrentA, saturationA, ideality, rs, rsh, ROOM_C);
    }

    private static double shunt(JsonNode row) {
        return row.get("rsh").isNull() ? Double.POSITIVE_INFINITY : number(row, "rsh");
    }

    private static void assertRelative(double found, double published, double part) {
        assertThat(found).isCloseTo(published, within(part * Math.abs(published)));
    }

    private static double number(JsonNode node, String name) {
        return ReferenceCurves.number(node.get(name));
    }

    private static JsonNode json(String file) {
        return new JsonMapper().readTree(PublishedRelationsTest.class.getResourceAsStream("/curve/" + file));
    }
}
