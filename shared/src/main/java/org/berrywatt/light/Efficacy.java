package org.berrywatt.light;

/** Luminous efficacy of radiation, K = 683 lm/W · ∫S V / ∫S over the band of the spectrum. */
final class Efficacy {
    private Efficacy() {}

    static double lumensPerWatt(Spectrum spectrum) {
        return Responses.LUMENS_PER_WATT * spectrum.weighted(Responses.LUMINOUS) / spectrum.integral();
    }
}
