package org.berrywatt.light;

/** The spectra of light sources that are carried as data or follow from a formula. */
final class Spectra {
    /** ASTM G173-03, AM1.5 global, 280 to 4000 nm, in W m⁻² nm⁻¹: the reference sunlight of IEC 60904-3. */
    static final Spectrum AM15G = SpectralTable.read("am15g.csv").column("AM1.5G");

    private static final SpectralTable ILLUMINANTS = SpectralTable.read("illuminants.csv");

    private Spectra() {}

    /** A printed spectrum over its tabulated band; CIE illuminants are relative (CIE 15:2004, CIE 015:2018). */
    static Spectrum of(Illuminant illuminant) {
        return illuminant == Illuminant.AM15G
                ? AM15G
                : ILLUMINANTS.column(illuminant.key()).finer();
    }

    /** Planck's law every nanometre of the band, as radiance in W m⁻² sr⁻¹ nm⁻¹. */
    static Spectrum of(BlackBody body) {
        return Spectrum.sampled(body.fromNm(), body.toNm(), nm -> Planck.radiance(nm, body.temperatureK()));
    }
}
