package org.berrywatt.light;

/** The reference sunlight as a lux meter sees it. */
final class Sunlight {
    /** Illuminance per irradiance of ASTM G173 AM1.5 global, in lx per W/m². */
    static final double LUX_PER_WM2 = Efficacy.lumensPerWatt(Spectra.AM15G);

    private Sunlight() {}
}
