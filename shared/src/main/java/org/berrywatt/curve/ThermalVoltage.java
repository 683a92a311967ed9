package org.berrywatt.curve;

/**
 * Thermal voltage kT/q.
 *
 * <p>Constants are exact since the 2019 revision of the SI (BIPM, The International System of Units, 9th edition).
 */
public final class ThermalVoltage {
    private static final double BOLTZMANN_J_PER_K = 1.380649e-23;
    private static final double ELEMENTARY_CHARGE_C = 1.602176634e-19;
    private static final double ZERO_CELSIUS_K = 273.15;

    private ThermalVoltage() {}

    /** kT/q in V at a temperature in degrees Celsius, in (-273.15, infinity). */
    public static double atCelsius(double temperatureC) {
        return BOLTZMANN_J_PER_K / ELEMENTARY_CHARGE_C * (temperatureC + ZERO_CELSIUS_K);
    }
}
