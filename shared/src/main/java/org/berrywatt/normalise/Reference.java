package org.berrywatt.normalise;

/**
 * The conditions at which cells are compared.
 *
 * @param irradianceWm2 effective irradiance, in (0, ∞)
 * @param areaM2 in (0, ∞)
 */
public record Reference(double irradianceWm2, double areaM2) {
    /**
     * Checks the conditions.
     *
     * @throws NormalisationRefused when one is not in (0, ∞)
     */
    public Reference {
        Limits.require(
                irradianceWm2 > 0 && irradianceWm2 < Double.POSITIVE_INFINITY,
                "referenceIrradiance",
                irradianceWm2,
                "(0, ∞)");
        Limits.require(areaM2 > 0 && areaM2 < Double.POSITIVE_INFINITY, "referenceArea", areaM2, "(0, ∞)");
    }
}
