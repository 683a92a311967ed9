package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpectraTest {

    /** Efficacy of each source over a band, computed with mpmath from the published tables; see the file's header. */
    record Published(String source, int fromNm, int toNm, double lumensPerWatt) {}

    static Stream<Published> efficacies() throws IOException {
        var stream = Objects.requireNonNull(SpectraTest.class.getResourceAsStream("/light/luminous_efficacy.csv"));
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("source"))
                    .map(line -> line.split(",", -1))
                    .map(cells -> new Published(
                            cells[0],
                            Integer.parseInt(cells[1]),
                            Integer.parseInt(cells[2]),
                            Double.parseDouble(cells[5])))
                    .filter(published -> spectrum(published) != null)
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("efficacies")
    void reproducesThePublishedEfficacyOfEachSource(Published published) {
        assertThat(Efficacy.lumensPerWatt(Objects.requireNonNull(spectrum(published))))
                .isCloseTo(published.lumensPerWatt(), within(1e-4 * published.lumensPerWatt()));
    }

    @Test
    void sunlightOfAstmG173CarriesAThousandWattsToThePrintedDigit() {
        // ASTM G173-03, AM1.5 global over 280 to 4000 nm: 1000.37 W/m²
        assertThat(Spectra.AM15G.integral()).isCloseTo(1000.37, within(0.005));
    }

    @Test
    void theEyeOf1924SumsToThePublishedFigure() {
        // CIE 18.2 / ISO 23539: sum of V(λ) in steps of 1 nm is 106.8569, maximum 1 at 555 nm
        var sum = IntStream.rangeClosed(360, 830)
                .mapToDouble(Responses.LUMINOUS::applyAsDouble)
                .sum();
        assertThat(sum).isCloseTo(106.8569, within(5e-5));
        assertThat(Responses.LUMINOUS.applyAsDouble(555)).isEqualTo(1);
    }

    @Test
    void greenLightHasTheEfficacyThatDefinesTheLumen() {
        // SI definition of the candela: 683 lm/W at 540 THz, which is 555 nm in air
        var green = Spectrum.sampled(554, 556, nm -> nm == 555 ? 1 : 0);
        assertThat(Efficacy.lumensPerWatt(green)).isCloseTo(683, within(1e-9));
    }

    @Test
    void blackBodiesHaveTheHandbookEfficacies() {
        // handbook figures over all wavelengths, from memory: 4000 K 54.7 lm/W, 2800 K about 15, maximum about 95 to 96
        // at 6640 K
        assertThat(Efficacy.lumensPerWatt(Spectra.of(new BlackBody(4000, 100, 60_000))))
                .isCloseTo(54.7, within(0.05));
        assertThat(Efficacy.lumensPerWatt(Spectra.of(new BlackBody(2800, 100, 60_000))))
                .isBetween(14.5, 16.0);
        assertThat(Efficacy.lumensPerWatt(Spectra.of(new BlackBody(6640, 100, 60_000))))
                .isBetween(95.0, 96.0);
    }

    @Test
    void evenLightOverTheVisibleHasTheEfficacyOfTheHandbooks() {
        // equal energy from 400 to 700 nm: 243 to 250 lm/W, repeated in lighting texts, from memory; 243.134 by mpmath
        assertThat(Efficacy.lumensPerWatt(Spectrum.sampled(400, 700, nm -> 1))).isCloseTo(243.134, within(5e-4));
    }

    @Test
    void illuminantsAre100At560Nanometres() {
        // CIE 15:2004: illuminants A and D65 are tabulated relative to 100 at 560 nm
        assertThat(Spectra.of(Illuminant.A).at(560)).isEqualTo(100);
        assertThat(Spectra.of(Illuminant.D65).at(560)).isEqualTo(100);
    }

    @Test
    void isDarkOutsideItsBand() {
        assertThat(Spectra.of(Illuminant.LED_B1).at(379.9)).isZero();
        assertThat(Spectra.AM15G.at(4000.1)).isZero();
    }

    @Test
    void continuesDaylightWithoutAStep() {
        var daylight = Spectra.of(Illuminant.ID65).continuedBy(Spectra.AM15G, 2500);
        assertThat(daylight.at(780)).isEqualTo(54.30);
        assertThat(daylight.at(781)).isCloseTo(54.30, within(1.0));
        assertThat(daylight.toNm()).isEqualTo(2500);
    }

    static @Nullable Spectrum spectrum(Published published) {
        var source = published.source();
        if (source.startsWith("ASTM")) {
            return Spectra.AM15G;
        }
        if (source.startsWith("black body")) {
            var kelvin = Double.parseDouble(source.replaceAll("[^0-9]", ""));
            return Spectra.of(new BlackBody(kelvin, published.fromNm(), published.toNm()));
        }
        return Stream.of(Illuminant.values())
                .filter(illuminant -> source.equals("CIE " + illuminant.key()))
                .findFirst()
                .map(Spectra::of)
                .orElse(null);
    }
}
