package org.berrywatt.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class MismatchTest {

    static Stream<Arguments> lampsAndInstruments() {
        return Stream.of(Lamp.values())
                .flatMap(lamp -> Stream.of(Instrument.values()).map(instrument -> Arguments.of(lamp, instrument)));
    }

    @ParameterizedTest
    @MethodSource("lampsAndInstruments")
    void isOneWhenInstrumentAndCellRespondAlike(Lamp lamp, Instrument instrument) {
        // IEC 60904-7: identical responses have no mismatch
        var response = Responses.of(instrument);
        assertThat(Mismatch.of(LampSpectra.of(lamp).typical(), response, response))
                .isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource
    void isOneUnderTheReferenceSunlight(DyeFamily dye) {
        // IEC 60904-7: identical spectra have no mismatch
        for (var instrument : Instrument.values()) {
            assertThat(LampTable.of(Lamp.SUN).mismatch(instrument, dye).value()).isEqualTo(1);
        }
    }

    @Test
    void followsItsDefinitionOnFlatSpectra() {
        // IEC 60904-7 by hand: lamp flat over 500 to 600 nm; instrument flat, cell 1 over the lamp's band and 0
        // elsewhere:
        // M = ∫Eref / Σ Eref over the lines of 1 nm from 500 to 600 nm
        var lamp = Spectrum.sampled(500, 600, nm -> 1);
        var reference = Spectra.AM15G.integral();
        var band =
                IntStream.rangeClosed(500, 600).mapToDouble(Spectra.AM15G::at).sum();
        var cell = Spectrum.sampled(500, 600, nm -> 1);
        assertThat(Mismatch.of(lamp, nm -> 1, cell::at)).isCloseTo(reference / band, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // current of an anthocyanin cell per W/m² and per lx against the sun (common practice, no source)
        "COOL_LED,   SOLAR_METER, 2.5,  2.9",
        "WARM_LED,   SOLAR_METER, 2.1,  2.6",
        "HALOGEN,    SOLAR_METER, 0.1,  0.2",
        "COOL_LED,   LUX_METER,   0.9,  1.0",
        "WARM_LED,   LUX_METER,   0.7,  1.0",
        "HALOGEN,    LUX_METER,   0.75, 1.05",
        "FLUORESCENT,LUX_METER,   0.8,  1.0",
        "HALOGEN,    REFERENCE_CELL, 0.2, 0.4",
        "WARM_LED,   REFERENCE_CELL, 1.8, 2.5"
    })
    void liesWhereExperienceHasItForAnthocyanin(Lamp lamp, Instrument instrument, double low, double high) {
        assertThat(LampTable.of(lamp)
                        .mismatch(instrument, DyeFamily.ANTHOCYANIN)
                        .value())
                .isBetween(low, high);
    }

    @Test
    void leavesChlorophyllHalfTheCurrentPerLuxUnderWhiteLeds() {
        // common practice, no source: about 0.5 per lx against the sun
        assertThat(LampTable.of(Lamp.WARM_LED)
                        .mismatch(Instrument.LUX_METER, DyeFamily.CHLOROPHYLL)
                        .value())
                .isBetween(0.45, 0.65);
    }

    @Test
    void leavesAnUndyedCellNearlyDarkUnderWhiteLeds() {
        // common practice, no source: white LEDs hold no ultraviolet
        assertThat(LampTable.of(Lamp.COOL_LED)
                        .mismatch(Instrument.LUX_METER, DyeFamily.UNDYED)
                        .value())
                .isLessThan(0.01);
    }

    @ParameterizedTest
    @EnumSource
    void knowsALuxMeterToMatchAnthocyaninBetterThanAFlatInstrument(Lamp lamp) {
        var lux = LampTable.of(lamp).mismatch(Instrument.LUX_METER, DyeFamily.ANTHOCYANIN);
        assertThat(lux.relativeUncertainty()).isBetween(0.0, 0.15);
        assertThat(Math.abs(Math.log(lux.value()))).isLessThan(0.25);
    }
}
