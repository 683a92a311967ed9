package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.berrywatt.reading.SolarClass.GALVANIC;
import static org.berrywatt.reading.SolarClass.MIXED;
import static org.berrywatt.reading.SolarClass.NO_RESPONSE;
import static org.berrywatt.reading.SolarClass.PHOTOVOLTAIC;
import static org.berrywatt.reading.SolarClass.REVERSED;

import java.util.Random;
import org.assertj.core.api.AbstractObjectAssert;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Signatures of school cells, read with a cheap meter: u = 1 mV and 0.1 µA. A dark voltage is worth a word from 50 mV or 20 %
 * of the voltage under light (common practice, no source). Standard potentials (from memory): zinc and iodine 1.30 V, copper
 * and iodine about 0.72 V; a cell of titania and iodide stays below 0.9 V.
 */
class DarkCheckTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // dark mV, dark µA, light mV, light µA
        "berry cell in the sun,                   2,   0.0,  420,  990, PHOTOVOLTAIC",
        "berry cell under a torch,                1,   0.0,   60,   40, PHOTOVOLTAIC",
        "weak cell,                               0,   0.0,    9,  1.5, PHOTOVOLTAIC",
        "rest of a battery in a good cell,       30,   9.0,  420,   90, MIXED",
        "dark voltage beside a small current,    80,   0.0,  300,  100, MIXED",
        "dark voltage of a fifth,                15,   0.0,   60,   40, MIXED",
        "fresh cell with alcohol,               180,  60.0,  260,   95, GALVANIC",
        "clip of copper in iodine,              650, 200.0,  655,  203, GALVANIC",
        "clip of zinc in iodine,               1250, 900.0, 1260,  905, GALVANIC",
        "battery that light works against,      300,  20.0,  220,  100, GALVANIC",
        "battery in the dark and in the light,  300,  40.0,  300,   40, GALVANIC",
        "swapped leads,                           0,   0.0, -380,  -80, REVERSED",
        "swapped leads with a dark part,        -30,  -9.0, -420,  -90, REVERSED",
        "swapped leads of a battery,           -180, -60.0, -260,  -95, GALVANIC",
        "dry cell,                                0,   0.0,    1,  0.1, NO_RESPONSE",
        "cell that is not there,                  0,   0.0,    0,  0.0, NO_RESPONSE"
    })
    void tellsCellsByTheirSignature(
            String cell, double darkMv, double darkUa, double lightMv, double lightUa, SolarClass expected) {
        assertThat(classify(read(darkMv, darkUa), read(lightMv, lightUa)).solarClass())
                .isEqualTo(expected);
    }

    @Test
    void showsTheNumbersThatDecided() {
        assertDecider(classify(read(1250, 900), read(1260, 905)), "voltage", "V")
                .satisfies(it -> {
                    assertThat(it.value()).isEqualTo(1.260);
                    assertThat(it.limit()).isEqualTo(0.9);
                });
        assertDecider(classify(read(180, 60), read(260, 95)), "darkShare", "1").satisfies(it -> {
            assertThat(it.value()).isEqualTo(60.0 / 95);
            assertThat(it.limit()).isEqualTo(0.5);
        });
        assertDecider(classify(read(300, 20), read(220, 100)), "voltageResponse", "1")
                .satisfies(it -> {
                    assertThat(it.value()).isLessThan(it.limit());
                    assertThat(it.limit()).isEqualTo(-3);
                });
        assertDecider(classify(read(0, 0), read(1, 0.1)), "response", "1").satisfies(it -> {
            assertThat(it.value()).isBetween(0.0, it.limit());
            assertThat(it.limit()).isEqualTo(3);
        });
    }

    /** Swapping the leads turns a solar cell into a reversed one and changes nothing else. */
    @Test
    void seesTheSameCellThroughSwappedLeads() {
        Random random = new Random(20261125);
        for (int i = 0; i < 2000; i++) {
            double[] x = random.doubles(4, -500, 500).toArray();
            SolarClass straight = classify(read(x[0], x[1]), read(x[2], x[3])).solarClass();
            SolarClass swapped =
                    classify(read(-x[0], -x[1]), read(-x[2], -x[3])).solarClass();
            assertThat(swapped.counts()).isEqualTo(straight == REVERSED);
            assertThat(straight.counts()).isEqualTo(swapped == REVERSED);
            assertThat(swapped == GALVANIC).isEqualTo(straight == GALVANIC);
        }
    }

    @Test
    void decidesByTheVoltageWhenNoCurrentWasRead() {
        assertThat(classify(new Terminals(mv(2), null), new Terminals(mv(300), null))
                        .solarClass())
                .isEqualTo(PHOTOVOLTAIC);
        assertThat(classify(new Terminals(mv(280), null), new Terminals(mv(300), null))
                        .solarClass())
                .isEqualTo(GALVANIC);
    }

    @Test
    void decidesByTheCurrentWhenNoVoltageWasRead() {
        assertThat(classify(new Terminals(null, ua(9)), new Terminals(null, ua(90)))
                        .solarClass())
                .isEqualTo(MIXED);
    }

    @Test
    void overlooksADarkReadingWithinTheMetersUncertainty() {
        Terminals coarseDark = new Terminals(mv(0), new Estimate(1e-6, 1e-6));
        assertThat(classify(coarseDark, read(300, 10)).solarClass()).isEqualTo(PHOTOVOLTAIC);
    }

    @Test
    void keepsToTheThresholdsOfTheDay() {
        DarkThresholds strict = new DarkThresholds(3, 0.01, 0.02, 0.050, 0.2, 0.9);
        assertThat(DarkCheck.classify(Covered.oneWay(read(10, 9)), read(420, 90), strict)
                        .solarClass())
                .isEqualTo(GALVANIC);
    }

    @Test
    void refusesReadingsThatCannotBeCompared() {
        assertThatThrownBy(() -> classify(new Terminals(mv(2), null), new Terminals(null, ua(40))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a dark check needs the voltage or the current both in the dark and under light");
    }

    @Test
    void ranksSolarCellsOnly() {
        assertThat(SolarClass.values()).filteredOn(SolarClass::counts).containsExactly(PHOTOVOLTAIC, MIXED);
        assertThat(NO_RESPONSE.counts()).isFalse();
    }

    private static AbstractObjectAssert<?, Decider> assertDecider(Classification found, String key, String unit) {
        Decider first = found.deciders().get(0);
        assertThat(first.key()).isEqualTo(key);
        assertThat(first.unit()).isEqualTo(unit);
        return assertThat(first);
    }

    private static Classification classify(Terminals dark, Terminals light) {
        return DarkCheck.classify(Covered.oneWay(dark), light, DarkThresholds.usual());
    }

    private static Terminals read(double millivolts, double microamperes) {
        return new Terminals(mv(millivolts), ua(microamperes));
    }

    private static Estimate mv(double millivolts) {
        return new Estimate(millivolts / 1000, 1e-3);
    }

    private static Estimate ua(double microamperes) {
        return new Estimate(microamperes * 1e-6, 0.1e-6);
    }
}
