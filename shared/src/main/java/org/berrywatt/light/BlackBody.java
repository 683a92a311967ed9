package org.berrywatt.light;

/**
 * A black body, seen over a band.
 *
 * @param temperatureK in [1000, 20000]
 * @param fromNm shortest wavelength, in [100, toNm)
 * @param toNm longest wavelength, in (fromNm, 60000]
 */
public record BlackBody(double temperatureK, int fromNm, int toNm) implements LightSource {
    private static final int GLASS_OPENS_NM = 300;
    private static final int GLASS_CLOSES_NM = 2500;

    /**
     * Checks temperature and band.
     *
     * @throws IllegalArgumentException when the temperature is not in [1000, 20000] K, or the band not within [100, 60000]
     *     nm or empty
     */
    public BlackBody {
        if (!(temperatureK >= 1000 && temperatureK <= 20_000)) {
            throw new IllegalArgumentException(
                    "a black body has a temperature in [1000, 20000] K, not " + temperatureK);
        }
        if (!(fromNm >= 100 && fromNm < toNm && toNm <= 60_000)) {
            throw new IllegalArgumentException(
                    "a black body has a rising band within [100, 60000] nm, not " + fromNm + " to " + toNm);
        }
    }

    /** A black body behind glass, 300 to 2500 nm: what leaves a bulb and what a solar meter under its dome sees. */
    public static BlackBody behindGlass(double temperatureK) {
        return new BlackBody(temperatureK, GLASS_OPENS_NM, GLASS_CLOSES_NM);
    }

    @Override
    public String key() {
        return "blackBody." + temperatureK + "." + fromNm + "-" + toNm;
    }
}
