package org.berrywatt.normalise;

import org.berrywatt.uncertainty.Estimate;

/**
 * Temperature of a cell while it was read, and what a kelvin does to it (relative coefficients of IEC 60891).
 *
 * @param celsius temperature of the cell, in [-40, 120] °C
 * @param currentPerKelvin α, relative change of the short-circuit current per kelvin, in [-0.05, 0.05]
 * @param voltagePerKelvin β, relative change of the open-circuit voltage per kelvin, in [-0.05, 0.05]
 */
public record CellTemperature(Estimate celsius, double currentPerKelvin, double voltagePerKelvin) {
    /** Temperature at which cells are compared (IEC 60904-3, standard test conditions). */
    public static final double REFERENCE_C = 25;

    private static final double COLDEST_C = -40;
    private static final double HOTTEST_C = 120;
    private static final double LARGEST_COEFFICIENT = 0.05;
    /** About -2 mV/K at 0.5 V (common practice, no source). */
    private static final double USUAL_VOLTAGE_PER_KELVIN = -0.004;
    /** A cell near a lamp may be this much warmer or colder than assumed (common practice, no source). */
    static final double HALF_WIDTH_K = 10;

    static final CellTemperature UNKNOWN = measured(Estimate.exact(REFERENCE_C));

    /** A measured temperature of a cell whose coefficients are not known: -0.4 %/K of voltage, none of current. */
    public static CellTemperature measured(Estimate celsius) {
        return new CellTemperature(celsius, 0, USUAL_VOLTAGE_PER_KELVIN);
    }

    /**
     * Checks the numbers.
     *
     * @throws NormalisationRefused when the temperature is not in [-40, 120] °C or a coefficient not in [-0.05, 0.05] per kelvin
     */
    public CellTemperature {
        var value = celsius.value();
        Limits.require(value >= COLDEST_C && value <= HOTTEST_C, "cellTemperature", value, "[-40, 120]");
        checkCoefficient(currentPerKelvin);
        checkCoefficient(voltagePerKelvin);
    }

    private static void checkCoefficient(double perKelvin) {
        Limits.require(
                Math.abs(perKelvin) <= LARGEST_COEFFICIENT, "temperatureCoefficient", perKelvin, "[-0.05, 0.05]");
    }
}
