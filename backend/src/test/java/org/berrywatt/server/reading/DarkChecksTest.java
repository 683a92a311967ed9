package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.berrywatt.server.reading.ReadingBench.confirmed;

import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class DarkChecksTest {

    private final ReadingBench at;
    private final Readings readings;

    @Autowired
    DarkChecksTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.at = new ReadingBench(server, json);
        this.readings = readings;
    }

    @Test
    void needNoStationAndNoSwappedLeads() {
        var dark = at.accepted(Bench.darkRequest(at.cell, new Typed("3", "mV")));
        assertThat(dark.kind()).isEqualTo("dark");
        assertThat(dark.stationId()).isNull();
        assertThat(dark.swappedVoltage()).isNull();
        assertThat(dark.meterZeroV()).isNull();
        assertThat(at.recorded(readings).get(0).swappedVoltage()).isNull();
    }

    @Test
    void keepBothWaysAndTellTheMetersZero() {
        var dark = at.accepted(dark("5", "-3", "0.4", "0.2"));
        assertThat(dark.swappedVoltage()).isEqualTo(new Typed("-3", "mV"));
        // half the sum of both ways: (5 - 3)/2 mV and (0.4 + 0.2)/2 µA
        assertThat(dark.meterZeroV()).isCloseTo(1e-3, within(1e-12));
        assertThat(dark.meterZeroA()).isCloseTo(0.3e-6, within(1e-15));
        var recorded = at.recorded(readings).get(0);
        assertThat(recorded.swappedVoltage()).isEqualTo(new Measured(-0.003, 1e-3));
        assertThat(recorded.swappedCurrent()).isEqualTo(new Measured(0.2e-6, 1e-7));
    }

    @Test
    void mayBeSwappedForTheVoltageAlone() {
        var dark = at.accepted(dark("5", "-3", "0.4", null));
        assertThat(dark.swappedCurrent()).isNull();
        assertThat(dark.meterZeroA()).isNull();
    }

    @ParameterizedTest(name = "{0} mV and {1} mV, {2} µA and {3} µA are asked about at {4}: {5}")
    @CsvSource(
            delimiter = '|',
            value = {
                "50 | 50  | 0.0 | 0.0 | swappedVoltage | 50 one way and 50 the other leave 50 mV",
                "120 | -60 | 0.0 | 0.0 | swappedVoltage | 120 one way and -60 the other leave 30 mV",
                "2  | -2  | 3.5 | 3.3 | swappedCurrent | 3.5 one way and 3.3 the other leave 3.4 µA",
            })
    void areAskedAboutWhenNoMeterHasSuchAZero(
            String straightMv, String swappedMv, String straightUa, String swappedUa, String field, String sentence) {
        var pair = dark(straightMv, swappedMv, straightUa, swappedUa);
        var problem = at.refused(pair, "dark.leads");
        assertThat(problem.field()).isEqualTo(field);
        assertThat(problem.detail()).contains(sentence).contains("Swap the leads");
        // ten steps of the last digit (common practice, no source)
        assertThat(problem.limit()).isEqualTo(field.endsWith("Voltage") ? "[-10, 10] mV" : "[-1, 1] µA");
        assertThat(at.recorded(readings)).isEmpty();
        assertThat(at.put(confirmed(pair))).hasStatusOk();
    }

    @Test
    void refuseASwappedNumberThatCannotBe() {
        var problem = at.refused(dark("5", "four", "0", "0"), "quantity.notANumber");
        assertThat(problem.field()).isEqualTo("swappedVoltage");
    }

    private ReadingRequest dark(String straightMv, String swappedMv, String straightUa, @Nullable String swappedUa) {
        return new ReadingRequest(
                at.cell,
                "dark",
                null,
                new Typed(straightMv, "mV"),
                new Typed(straightUa, "uA"),
                new Typed(swappedMv, "mV"),
                swappedUa == null ? null : new Typed(swappedUa, "uA"),
                null,
                false,
                null,
                null,
                Bench.NOTICED);
    }
}
