package org.berrywatt.normalise;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers with units for the worked calculation: four significant digits and the prefix that suits. */
final class Show {
    private static final MathContext DIGITS = new MathContext(4);
    private static final String[] PREFIXES = {"p", "n", "µ", "m", "", "k", "M"};
    private static final int PLAIN = 4;
    private static final double CM2_PER_M2 = 1e4;

    private Show() {}

    static String amperes(double value) {
        return withPrefix(value, "A");
    }

    static String volts(double value) {
        return withPrefix(value, "V");
    }

    static String watts(double value) {
        return withPrefix(value, "W");
    }

    static String irradiance(double value) {
        return number(value) + " W/m²";
    }

    static String area(double valueM2) {
        return number(valueM2 * CM2_PER_M2) + " cm²";
    }

    static String currentDensity(double valueAm2) {
        return withPrefix(valueAm2 / CM2_PER_M2, "A/cm²");
    }

    static String powerDensity(double valueWm2) {
        return withPrefix(valueWm2 / CM2_PER_M2, "W/cm²");
    }

    static String percent(double part) {
        return new BigDecimal(100 * part).round(new MathContext(2)).toPlainString() + " %";
    }

    static String percentPerKelvin(double part) {
        return number(100 * part) + " %/K";
    }

    static String number(double value) {
        var rounded = new BigDecimal(value).round(DIGITS);
        var decimals = DIGITS.getPrecision() - (rounded.precision() - rounded.scale());
        return rounded.signum() == 0
                ? "0"
                : rounded.setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY)
                        .toPlainString();
    }

    private static String withPrefix(double value, String unit) {
        var power = value == 0 ? 0 : (int) Math.floor(Math.log10(Math.abs(value)) / 3);
        var index = Math.max(0, Math.min(PREFIXES.length - 1, power + PLAIN));
        return number(value / Math.pow(1000, index - PLAIN)) + " " + PREFIXES[index] + unit;
    }
}
