package org.berrywatt.light;

/** Something that shines, known by its spectrum. */
public sealed interface LightSource permits Lamp, Illuminant, BlackBody, OwnSpectrum {

    /** Names the source; two sources of one key have the same spectrum. */
    String key();
}
