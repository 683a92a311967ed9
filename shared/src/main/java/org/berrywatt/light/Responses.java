package org.berrywatt.light;

import java.util.function.DoubleUnaryOperator;

/** Spectral responses per watt of light at a wavelength in nm; only their shape matters. */
final class Responses {
    /** Luminous efficacy of 540 THz light in lm/W (SI definition). */
    static final double LUMENS_PER_WATT = 683;

    /** V(λ) of CIE 1924 (ISO 23539), the eye in daylight and every lux meter that follows it. */
    static final DoubleUnaryOperator LUMINOUS =
            SpectralTable.read("v-lambda.csv").column("v")::at;

    /** The black plate of a thermal pyranometer. */
    static final DoubleUnaryOperator FLAT = nm -> 1;

    /** A crystalline silicon cell: current per watt is quantum efficiency times wavelength. */
    static final DoubleUnaryOperator SILICON = silicon();

    private Responses() {}

    static DoubleUnaryOperator of(Instrument instrument) {
        return switch (instrument) {
            case LUX_METER -> LUMINOUS;
            case SOLAR_METER -> FLAT;
            case REFERENCE_CELL -> SILICON;
        };
    }

    private static DoubleUnaryOperator silicon() {
        var efficiency = SpectralTable.read("silicon.csv").column("quantum_efficiency");
        return nm -> efficiency.at(nm) * nm;
    }
}
