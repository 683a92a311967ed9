package org.berrywatt.light;

/** What can be wrong with a table of a spectrum. */
public enum SpectrumFault {
    /** Fewer than two lines, or more than 10,000. */
    NUMBER_OF_LINES("rows"),
    /** A line does not hold two numbers. */
    NOT_TWO_NUMBERS("numbers"),
    /** A wavelength is not in [100, 20000] nm: probably another unit. */
    WAVELENGTH("wavelength"),
    /** A wavelength is not longer than the one before. */
    NOT_RISING("rising"),
    /** A power is not in [0, ∞). */
    POWER("power"),
    /** All powers are 0. */
    DARK("dark"),
    /** The band does not cover the visible, 400 to 700 nm. */
    BAND("band");

    private final String key;

    SpectrumFault(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
