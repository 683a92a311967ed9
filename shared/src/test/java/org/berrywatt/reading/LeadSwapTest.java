package org.berrywatt.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two readings of one difference in opposite directions, Y1 = d + P and Y2 = −d + P, have the solution d = (Y1 − Y2)/2 and
 * P = (Y1 + Y2)/2: NIST/SEMATECH e-Handbook of Statistical Methods, section 2.3.3.1.1, left-right bias (from memory). The
 * readings are invented and worked by hand; u = 1 mV and 0.1 µA, the last digits 1 mV and 0.1 µA.
 */
class LeadSwapTest {

    @ParameterizedTest(name = "{0} mV one way and {1} mV the other are {2} mV of the cell and {3} mV of the meter")
    @CsvSource({"48, -52, 50, -2", "8, 8, 0, 8", "-3, 5, -4, 1", "0, 0, 0, 0", "650, -648, 649, 1"})
    void keepsApartWhatTurnsWithTheLeadsAndWhatStays(double straight, double swapped, double own, double zero) {
        var found = mv(straight, swapped);
        assertThat(found.own().value()).isCloseTo(own / 1000, within(1e-15));
        assertThat(found.zero()).isCloseTo(zero / 1000, within(1e-15));
        assertThat(found.consistent()).isTrue();
    }

    /** The mean of two independent readings: u/√2 (JCGM 100:2008, 5.1.2). */
    @Test
    void isSurerThanOneReading() {
        assertThat(mv(48, -52).own().standardUncertainty()).isCloseTo(1e-3 / Math.sqrt(2), within(1e-15));
    }

    @ParameterizedTest(name = "{0} mV one way and {1} mV the other")
    @CsvSource({"50, 50", "120, -60", "-30, 5", "0, 21"})
    void findsFaultWithPairsThatNoZeroOfAMeterExplains(double straight, double swapped) {
        // ten steps of the last digit, here 10 mV, are the most that a meter's zero may be off (common practice, no
        // source)
        var found = mv(straight, swapped);
        assertThat(found.consistent()).isFalse();
        assertThat(found.limit()).isEqualTo(0.010);
        assertThat(found.own().standardUncertainty()).isGreaterThan(Math.abs(straight + swapped) / 2000 / Math.sqrt(3));
    }

    @ParameterizedTest(name = "{0}: one way {7}, both ways {8}")
    @CsvSource({
        // dark mV, swapped mV, dark µA, swapped µA, light mV, light µA
        "meter that shows 8 mV with shorted leads, 15,  1, 0.0,  0.0,  60, 40.0, MIXED, PHOTOVOLTAIC",
        "meter that shows 0.9 µA open,              0,  0, 0.9,  0.9,  60,  1.9, MIXED, PHOTOVOLTAIC",
        "battery that the zero hides,               0,  0, 0.0, -1.6, 300,  2.0, PHOTOVOLTAIC, MIXED",
        "battery,                                  180, -178, 60.0, -59.8, 260, 95.0, GALVANIC, GALVANIC",
        "good cell with a good meter,               2, -2, 0.0,  0.0, 420, 990.0, PHOTOVOLTAIC, PHOTOVOLTAIC",
        "swapped leads,                             0,  0, 0.0,  0.0, -380, -80.0, REVERSED, REVERSED",
        "swapped leads and a zero of 8 mV,          9,  7, 0.0,  0.0, -380, -80.0, REVERSED, REVERSED",
    })
    void callsNoZeroABatteryAndNoBatteryAZero(
            String cell,
            double darkMv,
            double swappedMv,
            double darkUa,
            double swappedUa,
            double lightMv,
            double lightUa,
            SolarClass oneWay,
            SolarClass bothWays) {
        var voltage = mv(darkMv, swappedMv);
        var current = ua(darkUa, swappedUa);
        var shown = new Terminals(voltage.straight(), current.straight());
        var light = new Terminals(reading(lightMv * 1e-3, 1e-3), reading(lightUa * 1e-6, 1e-7));
        assertThat(classOf(Covered.oneWay(shown), light)).isEqualTo(oneWay);
        assertThat(classOf(new Covered(shown, voltage, current), light)).isEqualTo(bothWays);
    }

    @Test
    void takesAQuantityReadOneWayAsItIs() {
        var shown = new Terminals(reading(0.015, 1e-3), reading(0, 1e-7));
        var own = new Covered(shown, mv(15, 1), null).own();
        assertThat(own.currentA()).isEqualTo(shown.currentA());
        assertThat(own.voltageV()).isEqualTo(mv(15, 1).own());
    }

    private static SolarClass classOf(Covered dark, Terminals light) {
        return DarkCheck.classify(dark, light, DarkThresholds.usual()).solarClass();
    }

    private static LeadSwap mv(double straight, double swapped) {
        return new LeadSwap(reading(straight / 1000, 1e-3), reading(swapped / 1000, 1e-3), 1e-3);
    }

    private static LeadSwap ua(double straight, double swapped) {
        return new LeadSwap(reading(straight * 1e-6, 1e-7), reading(swapped * 1e-6, 1e-7), 1e-7);
    }

    private static Estimate reading(double value, double uncertainty) {
        return new Estimate(value, uncertainty);
    }
}
