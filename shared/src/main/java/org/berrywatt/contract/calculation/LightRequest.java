package org.berrywatt.contract.calculation;

import org.jspecify.annotations.Nullable;

/**
 * A light reading and how the cell stands in that light. Either illuminance or irradiance is given.
 *
 * @param source key of a lamp ({@code "coolLed"}) or of a standard's spectrum ({@code "A"}, {@code "D65"}, {@code "LED-B3"}),
 *     {@code "blackBody"} or {@code "ownSpectrum"}
 * @param illuminanceLx what a lux meter shows, in [1e-3, 1e6]
 * @param irradianceWm2 what a meter in W/m² shows, in [1e-3, 1e5]
 * @param blackBodyK temperature of a black body, in [1000, 20000]
 * @param distanceM from a small lamp to the cell, in [1e-3, 1000]; the reading is carried there by the inverse-square law
 * @param readAtM from the lamp to where the reading was taken, in [1e-3, 1000]; 1 when left out
 * @param lampDiameterM in [1e-6, 10]; 0.05 when left out
 * @param angleDeg between the light and the normal of the cell, in [0, 90); 0 when left out. The reading is taken squarely
 * @param dye key of a dye family; {@code "other"} when left out
 * @param spectrum for one's own spectrum: rows of wavelength in nm and power, parted by comma, semicolon, tab or blanks
 * @param instrument key of an instrument; for irradiance {@code "solarMeter"} when left out
 */
public record LightRequest(
        @Nullable String source,
        @Nullable Double illuminanceLx,
        @Nullable Double irradianceWm2,
        @Nullable Double blackBodyK,
        @Nullable Double distanceM,
        @Nullable Double readAtM,
        @Nullable Double lampDiameterM,
        @Nullable Double angleDeg,
        @Nullable String dye,
        @Nullable String spectrum,
        @Nullable String instrument) {}
