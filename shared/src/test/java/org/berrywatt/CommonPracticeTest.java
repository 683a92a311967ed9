package org.berrywatt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.berrywatt.curve.Sweep;
import org.berrywatt.curve.SweepPoint;
import org.berrywatt.light.Ultraviolet;
import org.berrywatt.meter.Multimeter;
import org.berrywatt.quantity.Amount;
import org.berrywatt.quantity.TypedNumber;
import org.berrywatt.quantity.Understanding.Understood;
import org.berrywatt.reading.Covered;
import org.berrywatt.reading.DarkThresholds;
import org.berrywatt.reading.Fields;
import org.berrywatt.reading.Plausibility;
import org.berrywatt.reading.Settling;
import org.berrywatt.reading.SolarCheck;
import org.berrywatt.reading.SolarCheck.Lit;
import org.berrywatt.reading.SolarClass;
import org.berrywatt.reading.Terminals;
import org.berrywatt.reading.TimedValue;
import org.berrywatt.reading.Verdict;
import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What everybody in the trade knows, and what must raise no question: common practice, no source, every one of them. */
class CommonPracticeTest {
    private static final Instant FILLED = Instant.parse("2026-05-12T10:00:00Z");

    @Test
    void aRangeOf200MicroamperesThatTakes200MillivoltsPutsAKiloohmInTheWay() {
        var range = Multimeter.classroom().rangeOf(91e-6, 0.1e-6);
        assertThat(range.fullScaleA()).isEqualTo(200e-6);
        assertThat(range.resistanceOhm()).isCloseTo(1000, within(10.0));
    }

    @Test
    void aStraightLineHasAFillFactorOfAQuarter() {
        var line = DoubleStream.of(10, 33, 100, 330, 1e3, 3.3e3, 1e4)
                .mapToObj(ohm -> SweepPoint.exact(0.5 * ohm / (ohm + 500), 0.5 / (ohm + 500)))
                .toList();
        assertThat(Sweep.of(line).figures().fillFactor().value()).isCloseTo(0.25, within(0.002));
    }

    @ParameterizedTest
    @CsvSource({
        "bakeTemperature, 450 °C",
        "bakeTemperature, 475 °C",
        "bakeTemperature, 500 °C",
        "bakeTime, 30 min",
        "bakeTime, 0.5 h"
    })
    void filmsAreBakedFrom450To500DegreesForHalfAnHour(String field, String text) {
        assertThat(verdict(field, text)).isEqualTo(Verdict.FINE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {15, 18, 20})
    void aFreshCellFilledWithAlcoholTakesFortyToSixtyMinutesToSettle(double timeConstantMinutes) {
        // a fifth of the current at first; 4/5 have shrunk to 1/20 after τ ln 16 = 42 to 55 min
        var readings = Stream.of(0, 5, 10, 15)
                .map(minute -> at(minute, 100 - 80 * Math.exp(-minute / timeConstantMinutes)))
                .toList();
        var found = Settling.of(readings);
        assertThat(found.state()).isEqualTo(Settling.State.SETTLING);
        assertThat(Duration.between(FILLED, Objects.requireNonNull(found.comeBackAt())))
                .isBetween(Duration.ofMinutes(40), Duration.ofMinutes(60));
    }

    @ParameterizedTest
    @CsvSource({
        "voltage, 20 mV",
        "voltage, 50 mV",
        "voltage, 90 mV",
        "current, 20 uA",
        "current, 50 µA",
        "current, 90 μA"
    })
    void aTorchGivesTensOfMillivoltsAndTensOfMicroamperes(String field, String text) {
        assertThat(verdict(field, text)).isEqualTo(Verdict.FINE);
    }

    @Test
    void aCellThatAnswersToATorchIsASolarCell() {
        var found = SolarCheck.classify(
                Covered.oneWay(terminals(0.5e-3, 0.1e-6)),
                List.of(new Lit(terminals(45e-3, 30e-6), Ultraviolet.POOR)),
                null,
                DarkThresholds.usual());
        assertThat(found.solarClass()).isEqualTo(SolarClass.PHOTOVOLTAIC);
    }

    private static Verdict verdict(String key, String text) {
        var field = Fields.of(key).orElseThrow();
        var read = TypedNumber.read(text, null, Set.of(field.quantity()));
        var settled = Plausibility.settle(field, read, amount -> amount);
        assertThat(settled).isInstanceOf(Understood.class);
        return Plausibility.judge(field, ((Understood<Amount>) settled).meaning())
                .verdict();
    }

    private static Terminals terminals(double voltageV, double currentA) {
        var meter = Multimeter.classroom();
        return new Terminals(meter.voltageV(voltageV, 1e-4), meter.currentA(currentA, 1e-7));
    }

    private static TimedValue at(double minute, double value) {
        return new TimedValue(
                FILLED.plus(Duration.ofSeconds(Math.round(60 * minute))), new Estimate(value, 0.001 * value));
    }
}
