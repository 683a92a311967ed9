package org.berrywatt.demo;

import java.util.Locale;

/**
 * How a team writes down what its meter shows.
 *
 * @param comma whether a comma marks the decimals
 * @param gap what stands between number and unit
 * @param milli whether voltages are read in mV and currents in mA
 * @param micro spelling of microampere
 */
record Habit(boolean comma, String gap, boolean milli, String micro) {

    /** A voltage from a meter of 2000 counts: steps of 0.1 mV up to 200 mV, of 1 mV above. */
    String voltage(double volts) {
        if (Math.abs(volts) < 0.19995) {
            return written("%.1f", volts * 1e3, "mV");
        }
        return milli ? written("%.0f", volts * 1e3, "mV") : written("%.3f", volts, "V");
    }

    /** A current: steps of 0.1 uA while it is small, of 1 uA above, as on its ranges. */
    String current(double amperes) {
        if (Math.abs(amperes) < Meter.SMALL_CURRENT_A) {
            return written("%.1f", amperes * 1e6, micro);
        }
        return milli ? written("%.3f", amperes * 1e3, "mA") : written("%.0f", amperes * 1e6, micro);
    }

    String written(String format, double number, String unit) {
        String digits = String.format(Locale.ROOT, format, number + 0.0);
        return (comma ? digits.replace('.', ',') : digits) + gap + unit;
    }
}
