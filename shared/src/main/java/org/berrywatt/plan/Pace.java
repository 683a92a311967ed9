package org.berrywatt.plan;

/**
 * Minutes that the steps of a cell take in a class. Common practice, no source, where none is named; the bake follows G. P.
 * Smestad and M. Graetzel, J. Chem. Educ. 75 (1998) 752 (450 °C for 30 min; from memory).
 */
final class Pace {

    /** One team grinds one paste. */
    static final int PASTE = 35;

    static final int COAT_EACH = 5;
    static final int DRY = 12;

    /** From cold, at no more than 20 K a minute. */
    static final int HEAT_UP = 20;

    /** On the heater, to where it may be touched. */
    static final int COOL_DOWN = 30;

    static final int RINSE_AND_DRY = 10;
    static final int COUNTER_ELECTRODE = 10;
    static final int ASSEMBLE = 10;
    static final int FILL_AND_SETTLE = 15;

    /** Dark check, light, voltage, current and one load sweep. */
    static final int MEASURE = 11;

    private Pace() {}

    static int film(int cells) {
        return PASTE + COAT_EACH * cells + DRY;
    }

    static int bake(double holdMin) {
        return HEAT_UP + (int) Math.ceil(holdMin) + COOL_DOWN;
    }

    static int dyeAndClose(double soakMin) {
        return (int) Math.ceil(soakMin) + RINSE_AND_DRY + ASSEMBLE + FILL_AND_SETTLE;
    }
}
