package org.berrywatt.safety;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Places and materials that a team is briefed on before it begins; the points are what the briefing goes through. */
public enum Zone {
    GLASS("glass", false),
    POWDER("powder", false),
    /** Hot plate, oven, hot air, hot glue. */
    HEAT("heat", true),
    FLAME("flame", true),
    CORROSIVES("corrosives", true),
    FLAMMABLES("flammables", false),
    /** Iodine, iodide and the solvents of the electrolyte. */
    IODINE("iodine", false),
    PLANTS("plants", false),
    ULTRAVIOLET("ultraviolet", false),
    /** Lamps, mains and the sun. */
    LAMPS("lamps", false);

    private final String key;
    private final boolean gated;

    Zone(String key, boolean gated) {
        this.key = key;
        this.gated = gated;
    }

    /** The zone of a key, or empty when there is none. */
    public static Optional<Zone> of(String key) {
        return Arrays.stream(values()).filter(zone -> zone.key.equals(key)).findFirst();
    }

    public String key() {
        return key;
    }

    /** Whether a team's stage counts as done only under a valid sign-off: what is hot, burns or corrodes. */
    public boolean gated() {
        return gated;
    }

    /** Keys of what the briefing goes through, in its order. */
    public List<String> points() {
        return switch (this) {
            case GLASS -> List.of("edges", "shards");
            case POWDER -> List.of("wet", "wipeDamp");
            case HEAT -> List.of("looksCold", "tongs", "coldToCold", "noAlcohol", "burnWater");
            case FLAME -> List.of("hairSleeves", "tray", "noSolvents", "putOut");
            case CORROSIVES -> List.of("goggles", "diluteOnly", "eyeWash", "acidIntoWater");
            case FLAMMABLES -> List.of("noHeat", "lidded");
            case IODINE -> List.of("gogglesGloves", "drops", "tellTeacher");
            case PLANTS -> List.of("named", "notEaten");
            case ULTRAVIOLET -> List.of("teacherHolds", "goggles365");
            case LAMPS -> List.of("noStaring", "dryBench");
        };
    }
}
