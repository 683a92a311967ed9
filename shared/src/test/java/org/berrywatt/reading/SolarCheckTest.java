package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.berrywatt.reading.SolarClass.GALVANIC;
import static org.berrywatt.reading.SolarClass.NO_RESPONSE;
import static org.berrywatt.reading.SolarClass.OXIDE_ONLY;
import static org.berrywatt.reading.SolarClass.PHOTOVOLTAIC;
import static org.berrywatt.reading.SolarClass.REVERSED;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.berrywatt.light.Ultraviolet;
import org.berrywatt.reading.LightToggles.Toggle;
import org.berrywatt.reading.SolarCheck.Lit;
import org.berrywatt.uncertainty.Estimate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Signatures of school cells, read to u = 1 mV and 0.1 µA. White LEDs hold no light below 388 nm, where bare titania answers
 * (band gap of anatase 3.2 eV); other signatures are common practice, no source.
 */
class SolarCheckTest {
    private static final Covered DARK = Covered.oneWay(read(1, 0));

    @Test
    void findsBareOxideWhereTheSunAnswersAndTheLedDoesNot() {
        assertThat(classify(null, sun(300, 60), led(1, 0))).isEqualTo(OXIDE_ONLY);
        assertThat(classify(null, led(1, 0), sun(300, 60))).isEqualTo(OXIDE_ONLY);
    }

    @Test
    void ranksADyedCellThatAnswersToBoth() {
        assertThat(classify(null, sun(400, 500), led(300, 40))).isEqualTo(PHOTOVOLTAIC);
    }

    @Test
    void findsNoBareOxideWithoutBothLights() {
        assertThat(classify(null, led(1, 0))).isEqualTo(NO_RESPONSE);
        assertThat(classify(null, sun(300, 60))).isEqualTo(PHOTOVOLTAIC);
        assertThat(classify(null, sun(1, 0), led(1, 0))).isEqualTo(NO_RESPONSE);
    }

    @Test
    void drawsNothingFromATraceOfUltraviolet() {
        assertThat(classify(null, led(1, 0), new Lit(read(300, 60), Ultraviolet.POOR)))
                .isEqualTo(PHOTOVOLTAIC);
    }

    @Test
    void believesALaterAnswerUnderTheLed() {
        assertThat(classify(null, sun(300, 60), led(1, 0), led(250, 30))).isEqualTo(PHOTOVOLTAIC);
    }

    @Test
    void leavesABatteryABattery() {
        assertThat(classify(null, led(1, 0), sun(950, 60))).isEqualTo(GALVANIC);
        assertThat(classify(null, led(1, 0), sun(-300, -60))).isEqualTo(REVERSED);
    }

    @Test
    void countsNoResponseThatDoesNotComeBackWithTheShutter() {
        assertThat(classify(toggles(0, 40, 0, 0, 0, 0, 0), sun(300, 40))).isEqualTo(NO_RESPONSE);
        assertThat(classify(toggles(0, 40, 0, 41, 0, 39, 0), sun(300, 40))).isEqualTo(PHOTOVOLTAIC);
    }

    @Test
    void showsTheNumbersOfBothLights() {
        var found = SolarCheck.classify(DARK, List.of(sun(300, 60), led(1, 0)), null, DarkThresholds.usual());
        var silence = found.deciders().get(0);
        assertThat(silence.key()).isEqualTo("response");
        assertThat(silence.value()).isLessThan(silence.limit());
        assertThat(found.deciders()).hasSizeGreaterThan(1);
    }

    @Test
    void needsAReadingUnderLight() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SolarCheck.classify(DARK, List.of(), null, DarkThresholds.usual()))
                .withMessage("a cell's class needs a reading under light");
    }

    private static SolarClass classify(@Nullable LightToggles toggles, Lit... history) {
        return SolarCheck.classify(DARK, Arrays.asList(history), toggles, DarkThresholds.usual())
                .solarClass();
    }

    private static LightToggles toggles(double... microamperes) {
        var series = new ArrayList<Toggle>();
        for (int i = 0; i < microamperes.length; i++) {
            series.add(new Toggle(i % 2 == 1, new Estimate(microamperes[i] * 1e-6, 0.1e-6)));
        }
        return LightToggles.of(series, DarkThresholds.usual());
    }

    private static Lit sun(double millivolts, double microamperes) {
        return new Lit(read(millivolts, microamperes), Ultraviolet.RICH);
    }

    private static Lit led(double millivolts, double microamperes) {
        return new Lit(read(millivolts, microamperes), Ultraviolet.NONE);
    }

    private static Terminals read(double millivolts, double microamperes) {
        return new Terminals(new Estimate(millivolts / 1000, 1e-3), new Estimate(microamperes * 1e-6, 0.1e-6));
    }
}
