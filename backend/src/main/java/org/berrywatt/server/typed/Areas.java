package org.berrywatt.server.typed;

import java.math.BigDecimal;

/** Areas between the science's square metres and the square centimetres of the screens. */
public final class Areas {

    private static final int DIGITS = 4;

    private Areas() {}

    /** An area in cm2; the decimal point moves, so that 0.0003 m2 are 3 cm2 and nothing beside it. */
    public static double squareCentimetres(double areaM2) {
        return BigDecimal.valueOf(areaM2).movePointRight(DIGITS).doubleValue();
    }
}
