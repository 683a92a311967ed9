package org.berrywatt.server.typed;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.light.OwnSpectrum;
import org.berrywatt.light.SpectrumFault;
import org.berrywatt.light.SpectrumRefused;
import org.berrywatt.server.platform.Refusal;

/** The door for spectra as tables: what passes shines. */
public final class SpectrumTable {

    /** A spectrometer of 2048 lines needs fewer, and its lines fit into a request. */
    private static final int MOST_CHARACTERS = 40_000;

    private SpectrumTable() {}

    /**
     * The spectrum of a table.
     *
     * @param path the field's path in the request
     * @param name under which its results are told apart
     * @throws Refusal {@code spectrum.tooLarge} with more than 40 000 characters, or as {@link OwnSpectrum#read} says; names the
     *     row, what stood there and what is allowed
     */
    public static OwnSpectrum read(String path, String name, String csv) {
        if (csv.length() > MOST_CHARACTERS) {
            throw Refusal.of(ProblemCode.SPECTRUM_TOO_LARGE)
                    .field(path)
                    .value(csv.length())
                    .limit("[0, " + MOST_CHARACTERS + "]");
        }
        try {
            return OwnSpectrum.read(name, csv);
        } catch (SpectrumRefused refused) {
            throw Refusal.of(code(refused.fault()))
                    .field(path)
                    .with("row", refused.row())
                    .value(Words.excerpt(refused.value()))
                    .limit(refused.limit());
        }
    }

    private static ProblemCode code(SpectrumFault fault) {
        return switch (fault) {
            case NUMBER_OF_LINES -> ProblemCode.SPECTRUM_ROWS;
            case NOT_TWO_NUMBERS -> ProblemCode.SPECTRUM_NUMBERS;
            case WAVELENGTH -> ProblemCode.SPECTRUM_WAVELENGTH;
            case NOT_RISING -> ProblemCode.SPECTRUM_RISING;
            case POWER -> ProblemCode.SPECTRUM_POWER;
            case DARK -> ProblemCode.SPECTRUM_DARK;
            case BAND -> ProblemCode.SPECTRUM_BAND;
        };
    }
}
