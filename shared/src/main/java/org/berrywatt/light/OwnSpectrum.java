package org.berrywatt.light;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A spectrum that the class measured or was given; taken as exact, and dark outside its band. */
public final class OwnSpectrum implements LightSource {
    private final String name;
    private final Spectrum spectrum;
    private volatile @Nullable LampTable table;

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

    /** A point to draw by: a wavelength and its part of the largest power. */
    public record OutlinePoint(double nm, double share) {}

    /**
     * The spectrum to draw: of each stretch of the band its highest line, so that no peak is lost.
     *
     * @param most points at most, in [2, ∞)
     */
    public List<OutlinePoint> outline(int most) {
        return spectrum.highest(most).stream()
                .map(nm -> new OutlinePoint(nm, spectrum.at(nm) / spectrum.largest()))
                .toList();
    }

    Spectrum spectrum() {
        return spectrum;
    }

    /** Worked out once: the same spectrum is asked for with every cell. */
    LampTable table() {
        var known = table;
        if (known == null) {
            known = LampTable.workedOut(this);
            table = known;
        }
        return known;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof OwnSpectrum own && name.equals(own.name) && spectrum.equals(own.spectrum);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, spectrum);
    }
}
