package org.berrywatt.light;

/**
 * Kinds of lamp a school room offers; each has a representative spectrum.
 *
 * <p>How far lamps of one kind differ in lumens per watt follows the spread of published conversions (Michael, Johnston and
 * Moreno 2020: 21 to 131 lx per W/m² over all kinds; per kind common practice, no source). How fast their light drifts is
 * common practice, no source.
 */
public enum Lamp implements LightSource {
    SUN("sun", 0.10, 0.20, 15, Ultraviolet.RICH),
    WINDOW("window", 0.20, 0.20, 20, Ultraviolet.RICH),
    COOL_LED("coolLed", 0.125, 0.03, 60, Ultraviolet.NONE),
    WARM_LED("warmLed", 0.125, 0.03, 60, Ultraviolet.NONE),
    HALOGEN("halogen", 0.35, 0.05, 45, Ultraviolet.POOR),
    FLUORESCENT("fluorescent", 0.15, 0.05, 45, Ultraviolet.POOR);

    private final String key;
    private final double conversionUncertainty;
    private final double driftPerRootHour;
    private final int staleAfterMinutes;
    private final Ultraviolet ultraviolet;

    Lamp(
            String key,
            double conversionUncertainty,
            double driftPerRootHour,
            int staleAfterMinutes,
            Ultraviolet ultraviolet) {
        this.key = key;
        this.conversionUncertainty = conversionUncertainty;
        this.driftPerRootHour = driftPerRootHour;
        this.staleAfterMinutes = staleAfterMinutes;
        this.ultraviolet = ultraviolet;
    }

    @Override
    public String key() {
        return key;
    }

    public Ultraviolet ultraviolet() {
        return ultraviolet;
    }

    /** Relative standard uncertainty of the lumens per watt of lamps of this kind. */
    double conversionUncertainty() {
        return conversionUncertainty;
    }

    /** Relative standard uncertainty that a reading gains with the square root of its age in hours. */
    double driftPerRootHour() {
        return driftPerRootHour;
    }

    /** Age at which a last reading no longer says much, in minutes. */
    public int staleAfterMinutes() {
        return staleAfterMinutes;
    }
}
