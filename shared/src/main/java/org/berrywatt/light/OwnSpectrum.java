package org.berrywatt.light;

/** A spectrum that the class measured or was given; taken as exact, and dark outside its band. */
public final class OwnSpectrum implements LightSource {
    private final String name;
    private final Spectrum spectrum;

    private OwnSpectrum(String name, Spectrum spectrum) {
        this.name = name;
        this.spectrum = spectrum;
    }

    /**
     * Reads a table of wavelength in nm and power per wavelength, in any one unit: two columns parted by comma, semicolon,
     * tab or blanks, one line per wavelength. Lines that start with {@code #} and one heading are passed over. Where a
     * semicolon or tab parts the columns, a comma is a decimal sign.
     *
     * @param name under which results of this spectrum are told apart
     * @throws SpectrumRefused when the table is not a spectrum; it names the row
     */
    public static OwnSpectrum read(String name, String csv) {
        return new OwnSpectrum(name, SpectrumText.read(csv));
    }

    @Override
    public String key() {
        return "own." + name;
    }

    /** Shortest wavelength in nm. */
    public double fromNm() {
        return spectrum.fromNm();
    }

    /** Longest wavelength in nm. */
    public double toNm() {
        return spectrum.toNm();
    }

    Spectrum spectrum() {
        return spectrum;
    }
}
