package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.berrywatt.light.OwnSpectrum.OutlinePoint;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OwnSpectrumTest {

    @Test
    void givesTheSameAsTheTabulatedSpectrum() {
        // CIE 015:2018, LED-B3, typed as a class would: efficacy 316.8812 lm/W (computed with mpmath from the table)
        var spectrum = OwnSpectrum.read("desk lamp", text(Illuminant.LED_B3));
        var light = EffectiveIrradiance.of(
                spectrum, Instrument.LUX_METER, DyeFamily.ANTHOCYANIN, Estimate.exact(1000), true);
        assertThat(light.efficacyLmPerW().value()).isCloseTo(316.8812, within(1e-3));
        assertThat(light.totalWm2().value()).isCloseTo(1000 / 316.8812, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "400,1\n700,1",
                "# lamp\n\nwavelength,power\n400,1\n700,1\n",
                "\uFEFFnm;W\r\n400;1,0\r\n700;1,0\r\n",
                "400 1\n700 1",
                "400\t1,0\n700\t1,0"
            })
    void readsTheUsualWaysToWriteATable(String text) {
        var spectrum = OwnSpectrum.read("flat", text);
        assertThat(spectrum.fromNm()).isEqualTo(400);
        assertThat(spectrum.toNm()).isEqualTo(700);
        assertThat(spectrum.spectrum().integral()).isCloseTo(300, within(1e-9));
    }

    @Test
    void seesEqualEnergyOverTheVisibleAsHandbooksDo() {
        // equal energy limited to 400 to 700 nm: 243.134 lm/W computed with mpmath, 243 to 250 printed (from memory)
        assertThat(LampTable.of(OwnSpectrum.read("flat", "400,1\n700,1"))
                        .efficacyLmPerW()
                        .value())
                .isCloseTo(243.134, within(0.01));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource({
        "'',                               NUMBER_OF_LINES, 0",
        "'400,1',                          NUMBER_OF_LINES, 0",
        "'nm,power\n400,1\nabc,2\n700,1',  NOT_TWO_NUMBERS, 3",
        "'400,1\n500\n700,1',              NOT_TWO_NUMBERS, 2",
        "'0.4,1\n0.7,1',                   WAVELENGTH,      1",
        "'400,1\nNaN,1\n700,1',            WAVELENGTH,      2",
        "'400,1\n600,1\n500,1\n700,1',     NOT_RISING,      3",
        "'400,1\n400,1\n700,1',            NOT_RISING,      2",
        "'400,1\n500,-1\n700,1',           POWER,           2",
        "'400,1\n500,NaN\n700,1',          POWER,           2",
        "'400,1\n500,Infinity\n700,1',     POWER,           2",
        "'400,0\n700,0',                   DARK,            0",
        "'450,1\n700,1',                   BAND,            0",
        "'400,1\n650,1',                   BAND,            0"
    })
    void refusesWhatIsNoSpectrumAndNamesTheRow(String text, SpectrumFault fault, int row) {
        var refused = catchThrowableOfType(SpectrumRefused.class, () -> OwnSpectrum.read("mine", text));
        assertThat(refused.fault()).isEqualTo(fault);
        assertThat(refused.row()).isEqualTo(row);
    }

    @Test
    void saysWhatStoodThereAndWhatIsAllowed() {
        var refused = catchThrowableOfType(
                SpectrumRefused.class, () -> OwnSpectrum.read("mine", "400,1\n600,1\n500,1\n700,1"));
        assertThat(refused).hasMessage("row 3: 500 is not allowed, rising needs (600, 20000] nm");
    }

    @ParameterizedTest(name = "{1} is refused for {2}")
    @CsvSource({
        "'400,1\n0.7,1',               0.7, '[100, 20000] nm'",
        "'400,1\n500,-1\n700,1',       -1, '[0, ∞)'",
        "'400,0\n700,0',                0, '(0, ∞)'",
        "'450,1\n700,1',                '[450, 700] nm', '[400, 700] nm'",
        "'400,1',                       1, '[2, 10000]'",
    })
    void namesTheLimitAsAnInterval(String text, String value, String limit) {
        var refused = catchThrowableOfType(SpectrumRefused.class, () -> OwnSpectrum.read("mine", text));
        assertThat(refused.value()).isEqualTo(value);
        assertThat(refused.limit()).isEqualTo(limit);
    }

    @Test
    void isDrawnWithBothEndsAndEveryPeak() {
        var csv = IntStream.rangeClosed(350, 1050)
                .mapToObj(nm -> nm + "," + (nm == 611 ? 8 : 2))
                .collect(Collectors.joining("\n"));
        var outline = OwnSpectrum.read("a line at 611 nm", csv).outline(20);
        assertThat(outline).hasSize(20);
        assertThat(outline.get(0)).isEqualTo(new OutlinePoint(350, 0.25));
        assertThat(outline.get(19).nm()).isEqualTo(1050);
        assertThat(outline).contains(new OutlinePoint(611, 1));
        assertThat(OwnSpectrum.read("flat", "400,1\n700,1").outline(2)).hasSize(2);
    }

    @Test
    void isTheSameWhenItIsReadAgain() {
        assertThat(OwnSpectrum.read("flat", "400,1\n700,1"))
                .isEqualTo(OwnSpectrum.read("flat", "400,1\n700,1"))
                .hasSameHashCodeAs(OwnSpectrum.read("flat", "400 1\n700 1"))
                .isNotEqualTo(OwnSpectrum.read("flat", "400,1\n700,2"))
                .isNotEqualTo(OwnSpectrum.read("other", "400,1\n700,1"));
    }

    @Test
    void refusesATableWithoutEnd() {
        var text =
                IntStream.range(0, 10_001).mapToObj(i -> 300 + i * 0.1 + ",1").collect(Collectors.joining("\n"));
        var refused = catchThrowableOfType(SpectrumRefused.class, () -> OwnSpectrum.read("mine", text));
        assertThat(refused.fault()).isEqualTo(SpectrumFault.NUMBER_OF_LINES);
    }

    private static String text(Illuminant illuminant) {
        var spectrum = Spectra.of(illuminant);
        return IntStream.rangeClosed(76, 156)
                .map(line -> line * 5)
                .mapToObj(nm -> nm + "," + spectrum.at(nm))
                .collect(Collectors.joining("\n"));
    }
}
