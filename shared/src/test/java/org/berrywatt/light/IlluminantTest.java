package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Chromaticities x, y of the tabulated spectra under the CIE 1931 observer, sums over the lines of 5 nm.
 *
 * <p>Printed values: CIE 15:2004 table T.3 (A, D65, FL2, E) and CIE 015:2018 table 12.2 (LED series); ID65 and ID50 CIE
 * 184:2009 (from memory).
 */
class IlluminantTest {

    /** x̄, ȳ and z̄ at a wavelength. */
    record Observed(double nm, double x, double y, double z) {}

    private static final List<Observed> OBSERVER = observer();

    @ParameterizedTest
    @CsvSource({
        "A,       0.4476, 0.4074",
        "D65,     0.3127, 0.3290",
        "E,       0.3333, 0.3333",
        "FL2,     0.3721, 0.3751",
        "ID65,    0.3107, 0.3307",
        "ID50,    0.3432, 0.3602",
        "LED_B1,  0.4560, 0.4078",
        "LED_B2,  0.4357, 0.4012",
        "LED_B3,  0.3756, 0.3723",
        "LED_B4,  0.3422, 0.3502",
        "LED_B5,  0.3118, 0.3236",
        "LED_BH1, 0.4474, 0.4066",
        "LED_V1,  0.4548, 0.4044"
    })
    void hasTheColourThatTheStandardPrints(Illuminant illuminant, double x, double y) {
        var spectrum = Spectra.of(illuminant);
        var sumX = sum(spectrum, Observed::x);
        var sumY = sum(spectrum, Observed::y);
        var sum = sumX + sumY + sum(spectrum, Observed::z);
        assertThat(sumX / sum).isCloseTo(x, within(1e-4));
        assertThat(sumY / sum).isCloseTo(y, within(1e-4));
    }

    @Test
    void theObserversEyeIsTheOneOfLuxMeters() {
        // ISO/CIE 11664-1: ȳ(λ) of 1931 is V(λ) of 1924
        OBSERVER.forEach(
                line -> assertThat(Responses.LUMINOUS.applyAsDouble(line.nm())).isCloseTo(line.y(), within(1e-6)));
    }

    @ParameterizedTest
    @CsvSource({"LUX_METER", "SOLAR_METER", "REFERENCE_CELL"})
    void needsNoCorrectionUnderTheReferenceSunlight(Instrument instrument) {
        // IEC 60904-7: identical spectra have no mismatch
        var table = LampTable.of(Illuminant.AM15G);
        for (var dye : DyeFamily.values()) {
            assertThat(table.mismatch(instrument, dye).value()).isEqualTo(1);
        }
    }

    private static double sum(Spectrum spectrum, ToDoubleFunction<Observed> response) {
        return OBSERVER.stream()
                .mapToDouble(line -> spectrum.at(line.nm()) * response.applyAsDouble(line))
                .sum();
    }

    private static List<Observed> observer() {
        var file = Objects.requireNonNull(IlluminantTest.class.getResourceAsStream("/light/cie_1931_observer.csv"));
        try (var lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> Character.isDigit(line.charAt(0)))
                    .map(line -> line.split(",", -1))
                    .map(cells -> new Observed(number(cells[0]), number(cells[1]), number(cells[2]), number(cells[3])))
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double number(String cell) {
        return Double.parseDouble(cell);
    }
}
