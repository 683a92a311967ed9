package org.berrywatt.light;

/** Planck's law with the constants that define the SI since 2019; all of them exact. */
final class Planck {
    /** Planck constant in J s. */
    static final double H = 6.62607015e-34;
    /** Speed of light in m/s. */
    static final double C = 299_792_458;
    /** Boltzmann constant in J/K. */
    static final double K = 1.380649e-23;

    private static final double M_PER_NM = 1e-9;

    private Planck() {}

    /** Spectral radiance 2hc²/λ⁵ / (exp(hc/λkT) - 1), in W m⁻² sr⁻¹ nm⁻¹. */
    static double radiance(double nm, double temperatureK) {
        var wavelengthM = nm * M_PER_NM;
        var first = 2 * H * C * C / Math.pow(wavelengthM, 5);
        return first / Math.expm1(H * C / (wavelengthM * K * temperatureK)) * M_PER_NM;
    }
}
