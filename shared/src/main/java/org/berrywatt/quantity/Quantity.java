package org.berrywatt.quantity;

/** Kinds of quantity that a lab day meets. Each has one SI unit in which values are kept. */
public enum Quantity {
    /** In volts. */
    VOLTAGE("voltage"),
    /** In amperes. */
    CURRENT("current"),
    /** In ohms. */
    RESISTANCE("resistance"),
    /** In metres. */
    LENGTH("length"),
    /** In square metres. */
    AREA("area"),
    /** In watts per square metre. */
    IRRADIANCE("irradiance"),
    /** In lux. */
    ILLUMINANCE("illuminance"),
    /** In kelvins. */
    TEMPERATURE("temperature"),
    /** In seconds. */
    DURATION("duration"),
    /** In kilograms. */
    MASS("mass"),
    /** In cubic metres. */
    VOLUME("volume"),
    /** In moles per cubic metre. */
    CONCENTRATION("concentration"),
    /** As pH, which has no unit. */
    ACIDITY("acidity"),
    /** As a part of one. */
    FRACTION("fraction"),
    /** As a number of things. */
    COUNT("count"),
    /** In radians. */
    ANGLE("angle");

    private final String key;

    Quantity(String key) {
        this.key = key;
    }

    /** The name used in texts and on the wire, for example {@code "voltage"}. */
    public String key() {
        return key;
    }
}
