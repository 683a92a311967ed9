package org.berrywatt.light;

/**
 * Spectra that a standard prints: taken as exact, over the band of their table.
 *
 * <p>Sources: ASTM G173-03; CIE 15:2004 and CIE 015:2018. The chromaticities of the tables agree with the printed ones.
 */
public enum Illuminant implements LightSource {
    /** Reference sunlight, 280 to 4000 nm. */
    AM15G("AM1.5G"),
    /** Incandescent light, 300 to 780 nm. */
    A("A"),
    /** Daylight, 300 to 780 nm. */
    D65("D65"),
    /** Equal energy at every wavelength, 360 to 830 nm. */
    E("E"),
    /** Daylight behind window glass, 300 to 780 nm. */
    ID65("ID65"),
    /** Warmer daylight behind window glass, 300 to 780 nm. */
    ID50("ID50"),
    /** White LED of 2733 K, blue with phosphor. */
    LED_B1("LED-B1"),
    /** White LED of 2998 K, blue with phosphor. */
    LED_B2("LED-B2"),
    /** White LED of 4103 K, blue with phosphor. */
    LED_B3("LED-B3"),
    /** White LED of 5109 K, blue with phosphor. */
    LED_B4("LED-B4"),
    /** White LED of 6598 K, blue with phosphor. */
    LED_B5("LED-B5"),
    /** White LED of 2851 K, blue with phosphor, and red. */
    LED_BH1("LED-BH1"),
    /** White LED of 2724 K, violet with phosphor. */
    LED_V1("LED-V1"),
    /** Fluorescent tube. */
    FL2("FL2");

    private final String key;

    Illuminant(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }
}
