package org.berrywatt.light;

import java.util.function.DoubleUnaryOperator;

/**
 * Spectral mismatch (IEC 60904-7): what an instrument's reading under a lamp must be multiplied by to give the reference
 * sunlight under which the cell would deliver the same current,
 *
 * <pre>M = ∫Eref Sref · ∫Elamp Scell / (∫Elamp Sref · ∫Eref Scell)</pre>
 *
 * <p>It is 1 when the two spectra or the two responses are the same.
 */
final class Mismatch {
    private Mismatch() {}

    static double of(Spectrum lamp, DoubleUnaryOperator instrument, DoubleUnaryOperator cell) {
        return perReading(lamp, cell, instrument) / perReading(Spectra.AM15G, cell, instrument);
    }

    private static double perReading(Spectrum spectrum, DoubleUnaryOperator cell, DoubleUnaryOperator instrument) {
        return spectrum.weighted(cell) / spectrum.weighted(instrument);
    }
}
