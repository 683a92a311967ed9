package org.berrywatt.normalise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.berrywatt.meter.Display;
import org.junit.jupiter.api.Test;

/** Expected values by Ohm's law, by hand. */
class CellMeterTest {
    private final CellMeter meter = CellMeter.classroom();

    @Test
    void countsTheVoltmeterBesideTheLoad() {
        // 0.4 V on 100 kohm is 4 uA, on the meter's 10 Mohm 0.04 uA
        var point = meter.point(new SweepRow(100e3, new Display(0.4, 1e-3), null));
        assertThat(point.voltageV()).isEqualTo(0.4);
        assertThat(point.currentA()).isCloseTo(4.04e-6, within(1e-18));
    }

    @Test
    void countsTheBurdenOfTheCurrentRangeBehindTheLoad() {
        // 100 uA through no load and the 1002 ohm of the 200 uA range
        var point = meter.point(new SweepRow(0.0, null, new Display(100e-6, 1e-7)));
        assertThat(point.voltageV()).isCloseTo(0.1002, within(1e-12));
    }

    @Test
    void takesVoltageAndCurrentAsShownWhenBothWereRead() {
        var point = meter.point(new SweepRow(470.0, new Display(0.1, 1e-3), new Display(200e-6, 1e-6)));
        assertThat(point.voltageV()).isEqualTo(0.1);
        assertThat(point.currentA()).isEqualTo(200e-6);
    }
}
