package org.berrywatt.light;

/** The spectra of light sources that are carried as data or follow from a formula. */
final class Spectra {
    /** ASTM G173-03, AM1.5 global, 280 to 4000 nm, in W m⁻² nm⁻¹: the reference sunlight of IEC 60904-3. */
    static final Spectrum AM15G = SpectralTable.read("am15g.csv").column("AM1.5G");

    private static final SpectralTable ILLUMINANTS = SpectralTable.read("illuminants.csv");
    /** Second radiation constant hc/k in nm K, exact since the 2019 revision of the SI. */
    private static final double HC_OVER_K_NM_K = 1.4387768775039338e7;

    private Spectra() {}

    /** A CIE illuminant (CIE 15:2004, CIE 015:2018), relative, every nanometre of its tabulated band. */
    static Spectrum illuminant(String name) {
        return ILLUMINANTS.column(name).everyNanometre();
    }

    /** Planck's law, relative to 560 nm, over a band. */
    static Spectrum blackBody(double temperatureK, int fromNm, int toNm) {
        var atReference = planck(560, temperatureK);
        return Spectrum.sampled(fromNm, toNm, nm -> planck(nm, temperatureK) / atReference);
    }

    private static double planck(double nm, double temperatureK) {
        return Math.pow(nm / 560, -5) / Math.expm1(HC_OVER_K_NM_K / (nm * temperatureK));
    }
}
