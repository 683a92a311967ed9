package org.berrywatt.light;

import java.util.List;

/**
 * The spectrum of a source, and others that it might well have.
 *
 * @param typical the spectrum, or the one that stands for a kind of lamp
 * @param others show how far lamps of the kind differ; empty where the spectrum itself is known
 * @param conversionUncertainty relative standard uncertainty of the lumens per watt
 */
record LampSpectra(Spectrum typical, List<Spectrum> others, double conversionUncertainty) {
    private static final int GLASS_OPENS_NM = 300;
    private static final int WINDOW_CLOSES_NM = 2500;
    private static final int BULB_CLOSES_NM = 4000;

    static LampSpectra of(LightSource source) {
        if (source instanceof Lamp lamp) {
            return of(lamp);
        }
        if (source instanceof BlackBody body) {
            return known(Spectra.of(body));
        }
        return source instanceof Illuminant illuminant
                ? known(Spectra.of(illuminant))
                : known(((OwnSpectrum) source).spectrum());
    }

    private static LampSpectra known(Spectrum spectrum) {
        return new LampSpectra(spectrum, List.of(), 0);
    }

    private static LampSpectra of(Lamp lamp) {
        return switch (lamp) {
            case SUN -> kind(lamp, Spectra.AM15G, daylight(Illuminant.D65), blackBody(5200));
            case WINDOW -> kind(lamp, daylight(Illuminant.ID65), daylight(Illuminant.ID50), daylight(Illuminant.D65));
            case COOL_LED ->
                kind(lamp, Spectra.of(Illuminant.LED_B5), Spectra.of(Illuminant.LED_B4), Spectra.of(Illuminant.LED_B3));
            case WARM_LED -> kind(lamp, Spectra.of(Illuminant.LED_B1), Spectra.of(Illuminant.LED_B2));
            case HALOGEN -> kind(lamp, blackBody(3000), blackBody(2700), blackBody(3300));
            case FLUORESCENT -> kind(lamp, Spectra.of(Illuminant.FL2), Spectra.of(Illuminant.LED_B3));
        };
    }

    private static LampSpectra kind(Lamp lamp, Spectrum typical, Spectrum... others) {
        return new LampSpectra(typical, List.of(others), lamp.conversionUncertainty());
    }

    /** CIE tables of daylight end at 780 nm; sunlight through the same air goes on from there. */
    private static Spectrum daylight(Illuminant illuminant) {
        return Spectra.of(illuminant).continuedBy(Spectra.AM15G, WINDOW_CLOSES_NM);
    }

    private static Spectrum blackBody(double temperatureK) {
        return Spectra.of(new BlackBody(temperatureK, GLASS_OPENS_NM, BULB_CLOSES_NM));
    }
}
