package org.berrywatt.light;

/** Kinds of lamp a school room offers; each has a representative spectrum. */
public enum Lamp {
    SUN("sun"),
    WINDOW("window"),
    COOL_LED("coolLed"),
    WARM_LED("warmLed"),
    HALOGEN("halogen"),
    FLUORESCENT("fluorescent");

    private final String key;

    Lamp(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
