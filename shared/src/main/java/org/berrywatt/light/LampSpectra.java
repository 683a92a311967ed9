package org.berrywatt.light;

import java.util.List;

/**
 * The spectrum that stands for a kind of lamp, and others that a lamp of that kind might well have.
 *
 * @param typical stands for the kind
 * @param others show how far lamps of the kind differ
 */
record LampSpectra(Spectrum typical, List<Spectrum> others) {
    private static final int GLASS_OPENS_NM = 300;
    private static final int WINDOW_CLOSES_NM = 2500;
    private static final int BULB_CLOSES_NM = 4000;

    static LampSpectra of(Lamp lamp) {
        return switch (lamp) {
            case SUN -> new LampSpectra(Spectra.AM15G, List.of(daylight("D65"), blackBody(5200)));
            case WINDOW -> new LampSpectra(daylight("ID65"), List.of(daylight("ID50"), daylight("D65")));
            case COOL_LED -> illuminants("LED-B5", "LED-B4", "LED-B3");
            case WARM_LED -> illuminants("LED-B1", "LED-B2");
            case HALOGEN -> new LampSpectra(blackBody(3000), List.of(blackBody(2700), blackBody(3300)));
            case FLUORESCENT -> illuminants("FL2", "LED-B3");
        };
    }

    private static LampSpectra illuminants(String typical, String... others) {
        return new LampSpectra(
                Spectra.illuminant(typical),
                List.of(others).stream().map(Spectra::illuminant).toList());
    }

    /** CIE tables of daylight end at 780 nm; sunlight through the same air goes on from there. */
    private static Spectrum daylight(String illuminant) {
        return Spectra.illuminant(illuminant).continuedBy(Spectra.AM15G, WINDOW_CLOSES_NM);
    }

    private static Spectrum blackBody(double temperatureK) {
        return Spectra.blackBody(temperatureK, GLASS_OPENS_NM, BULB_CLOSES_NM);
    }
}
