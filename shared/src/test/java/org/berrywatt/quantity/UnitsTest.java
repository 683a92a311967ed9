package org.berrywatt.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {

    /** Factors: BIPM, The International System of Units, 9th edition 2019, tables 4, 7 and 8. */
    @ParameterizedTest
    @CsvSource({
        "V, 1, 0",
        "mV, 1e-3, 0",
        "uV, 1e-6, 0",
        "A, 1, 0",
        "mA, 1e-3, 0",
        "uA, 1e-6, 0",
        "nA, 1e-9, 0",
        "pA, 1e-12, 0",
        "ohm, 1, 0",
        "mohm, 1e-3, 0",
        "kohm, 1e3, 0",
        "Mohm, 1e6, 0",
        "Gohm, 1e9, 0",
        "m, 1, 0",
        "cm, 1e-2, 0",
        "mm, 1e-3, 0",
        "um, 1e-6, 0",
        "nm, 1e-9, 0",
        "m2, 1, 0",
        "cm2, 1e-4, 0",
        "mm2, 1e-6, 0",
        "Wm2, 1, 0",
        "mWcm2, 10, 0",
        "uWcm2, 1e-2, 0",
        "kWm2, 1e3, 0",
        "lx, 1, 0",
        "klx, 1e3, 0",
        "degC, 1, 273.15",
        "K, 1, 0",
        "s, 1, 0",
        "min, 60, 0",
        "h, 3600, 0",
        "d, 86400, 0",
        "g, 1e-3, 0",
        "mg, 1e-6, 0",
        "ug, 1e-9, 0",
        "kg, 1, 0",
        "L, 1e-3, 0",
        "mL, 1e-6, 0",
        "uL, 1e-9, 0",
        "molL, 1e3, 0",
        "mmolL, 1, 0",
        "pH, 1, 0",
        "percent, 1e-2, 0",
        "one, 1, 0",
        "count, 1, 0",
        "deg, 0.017453292519943295, 0",
        "rad, 1, 0"
    })
    void convertsAsTheInternationalSystemSays(String key, double toSi, double offsetSi) {
        MeasuringUnit unit = Units.of(key).orElseThrow();
        assertThat(unit.toSi()).isEqualTo(toSi);
        assertThat(unit.offsetSi()).isEqualTo(offsetSi);
    }

    @Test
    void knowsNoUnitByAnInventedKey() {
        assertThat(Units.of("furlong")).isEmpty();
    }

    @Test
    void spellsEveryUnitInOneWayOnlyWithinItsQuantity() {
        for (MeasuringUnit unit : Units.all()) {
            for (String symbol : unit.symbols()) {
                assertThat(Units.spelt(symbol, Set.of(unit.quantity()))).contains(unit);
            }
        }
    }
}
