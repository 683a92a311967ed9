package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.Field;
import org.berrywatt.quantity.TypedNumber;
import org.berrywatt.quantity.Understanding;
import org.berrywatt.quantity.Understanding.Ambiguous;
import org.berrywatt.quantity.Understanding.Understood;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlausibilityTest {

    /** A home-made cell under a torch gives tens of millivolts and tens of microamperes (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "voltage, 12 mV",
        "voltage, 60 mV",
        "voltage, 95 mV",
        "current, 10 uA",
        "current, 40 uA",
        "current, 95 uA",
        "current, 0.4 uA",
        "illuminance, 300 lx",
        "illuminance, 9.5 klx",
        "area, 2.25 cm2",
        "area, 4 cm2",
        "area, 100 mm2"
    })
    void takesACellUnderATorchWithoutAQuestion(String field, String text) {
        assertThat(judge(field, text)).isEqualTo(new Judgement(Verdict.FINE, null));
    }

    /** A covered cell gives zero, or a little of either sign; swapped leads turn any reading (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "voltage, 0 V",
        "voltage, -0.3 mV",
        "voltage, 18 mV",
        "voltage, -0.38 V",
        "current, 0.0 uA",
        "current, -0.2 uA"
    })
    void takesADarkCheckWithoutAQuestion(String field, String text) {
        assertThat(judge(field, text)).isEqualTo(new Judgement(Verdict.FINE, null));
    }

    /** Voltages and currents of 36 published natural-dye cells, of 0.25 to 2 cm²; the file names each source. */
    @ParameterizedTest
    @MethodSource("publishedCells")
    void takesPublishedNaturalDyeCellsWithoutAQuestion(String milliamperePerCm2, String volt) {
        double current = Double.parseDouble(milliamperePerCm2);
        assertThat(judge("voltage", volt + " V").verdict()).isEqualTo(Verdict.FINE);
        assertThat(judge("current", 0.25 * current + " mA").verdict()).isEqualTo(Verdict.FINE);
        assertThat(judge("current", 2 * current + " mA").verdict()).isEqualTo(Verdict.FINE);
    }

    /**
     * Full sun of 1000 W/m² (IEC 60904-3) and 122 klx (Michael, Johnston and Moreno 2020); bake at 450 °C for 30 min, soak
     * for 10 min (Smestad and Grätzel 1998; from memory); pH 2.9 to 3.4 of dilute acetic acid (pKa 4.76).
     */
    @ParameterizedTest
    @CsvSource({
        "irradiance, 1000 W/m2",
        "illuminance, 122 klx",
        "bakeTemperature, 450 °C",
        "bakeTime, 30 min",
        "soakTime, 10 min",
        "soakTime, 1 d",
        "pasteAcidity, 2.9",
        "pasteAcidity, 3.4",
        "glassResistance, 15 ohm",
        "load, 10 ohm",
        "load, 1 Mohm",
        "tapeLayers, 1",
        "grindTime, 30 min",
        "electrolyteDrops, 2"
    })
    void takesTheBooksValuesWithoutAQuestion(String field, String text) {
        assertThat(judge(field, text)).isEqualTo(new Judgement(Verdict.FINE, null));
    }

    /**
     * Limits of a titania and iodide cell: below 0.9 V, at most 21 mA/cm² in full sun; slips are by a prefix of a thousand
     * (common practice, no source).
     */
    @ParameterizedTest
    @CsvSource({
        "voltage, 400 V, IMPOSSIBLE, mV", "voltage, 45 V, IMPOSSIBLE, mV", "voltage, -400 V, IMPOSSIBLE, mV",
        "voltage, 1.3 V, UNUSUAL, ", "voltage, 0.95 V, UNUSUAL, ", "current, 40 A, IMPOSSIBLE, uA",
        "current, 2 A, IMPOSSIBLE, mA", "current, 40 mA, UNUSUAL, uA", "current, 25 mA, UNUSUAL, ",
        "illuminance, 9500 klx, IMPOSSIBLE, lx", "illuminance, 9.5 lx, UNUSUAL, klx", "area, 225 cm2, UNUSUAL, mm2",
        "area, 2.25 mm2, UNUSUAL, cm2", "area, -2.25 cm2, IMPOSSIBLE, ", "area, 0 cm2, IMPOSSIBLE, ",
        "load, 0.33 ohm, UNUSUAL, kohm", "irradiance, 5000 W/m2, IMPOSSIBLE, ", "irradiance, -1 W/m2, IMPOSSIBLE, ",
        "bakeTemperature, 4500 °C, IMPOSSIBLE, ", "bakeTemperature, 20 °C, UNUSUAL, ",
                "bakeTime, 30 h, IMPOSSIBLE, min",
        "angle, 95 deg, IMPOSSIBLE, ", "distance, 20 mm, UNUSUAL, cm"
    })
    void namesTheLikelySlip(String field, String text, Verdict verdict, @Nullable String likelyUnitKey) {
        assertThat(judge(field, text)).isEqualTo(new Judgement(verdict, likelyUnitKey));
    }

    @Test
    void refusesWhatIsNoNumber() {
        Amount nothing = new Amount("", "V", Fields.VOLTAGE.quantity(), Double.NaN, 1);
        assertThat(Plausibility.judge(Fields.VOLTAGE, nothing).verdict()).isEqualTo(Verdict.IMPOSSIBLE);
    }

    @Test
    void settlesTwoReadingsWhenOneOfThemCannotBe() {
        assertThat(settle(Fields.VOLTAGE, "1,234", "V"))
                .isInstanceOfSatisfying(
                        Understood.class, it -> assertThat(valueSi(it)).isEqualTo(1.234));
        assertThat(settle(Fields.VOLTAGE, "60", "mV"))
                .isInstanceOfSatisfying(
                        Understood.class, it -> assertThat(valueSi(it)).isEqualTo(0.060));
    }

    @Test
    void leavesTwoReadingsOpenWhenBothCanBe() {
        assertThat(settle(Fields.ILLUMINANCE, "12,345", "lx")).isInstanceOf(Ambiguous.class);
    }

    static Stream<Arguments> publishedCells() throws IOException {
        var file =
                Objects.requireNonNull(PlausibilityTest.class.getResourceAsStream("/naturaldye/natural_dye_cells.csv"));
        try (var lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return lines
                    .lines()
                    .filter(line -> line.matches("[AB]\\d.*"))
                    .map(line -> line.split(BETWEEN_CELLS, -1))
                    .filter(cells -> !cells[4].isEmpty())
                    .map(cells -> Arguments.of(cells[3], cells[4]))
                    .toList()
                    .stream();
        }
    }

    /** A comma with an even number of quotes behind it. */
    private static final String BETWEEN_CELLS = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    private static Understanding<Amount> settle(Field field, String text, @Nullable String unitKey) {
        Understanding<Amount> read = TypedNumber.read(text, unitKey, Set.of(field.quantity()));
        return Plausibility.settle(field, read, Function.identity());
    }

    private static Judgement judge(String fieldKey, String text) {
        Field field = Fields.of(fieldKey).orElseThrow();
        return Plausibility.judge(field, amount(settle(field, text, null)));
    }

    private static double valueSi(Understood<?> read) {
        return ((Amount) read.meaning()).valueSi();
    }

    private static Amount amount(Understanding<Amount> read) {
        return ((Understood<Amount>) read).meaning();
    }
}
