package org.berrywatt.safety;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What can hurt, with the usual GHS codes of the material as supplied (Regulation (EC) No 1272/2008, Annex VI; from memory
 * unless said otherwise). Suppliers and strengths differ: the safety data sheet decides.
 */
public enum Hazard {
    GLASS_EDGES("glassEdges", Zone.GLASS, false),
    /**
     * No code: the EU's label as carcinogenic by inhalation was annulled, confirmed by the Court of Justice on 1 August 2025
     * (read in an official summary). Dust is avoided all the same.
     */
    TITANIA_POWDER("titaniaPowder", Zone.POWDER, true),
    ZINC_OXIDE("zincOxide", Zone.POWDER, true),
    OTHER_POWDER("otherPowder", Zone.POWDER, true),

    NITRIC_ACID("nitricAcid", Zone.CORROSIVES, true),
    /** Flash point 39 °C read in an extract, the limits from memory. */
    ACETIC_ACID("aceticAcid", Zone.CORROSIVES, true),
    SODIUM_HYDROXIDE("sodiumHydroxide", Zone.CORROSIVES, true),

    HOT_PLATE("hotPlate", Zone.HEAT, true),
    HOT_GLUE("hotGlue", Zone.HEAT, false),
    BURNER("burner", Zone.FLAME, true),
    CANDLE("candle", Zone.FLAME, false),

    /** Ethanol and isopropanol; the figures are those of the one that is lit sooner, ethanol's or isopropanol's. */
    ALCOHOL("alcohol", Zone.FLAMMABLES, false),
    SPRAY_CAN("sprayCan", Zone.FLAMMABLES, true),

    IODINE_CRYSTALS("iodineCrystals", Zone.IODINE, true),
    /** Below 1 mol/L graded low hazard in an older edition of CLEAPSS student safety sheet 56 (read in an extract). */
    IODIDE_SOLUTION("iodideSolution", Zone.IODINE, false),
    ETHYLENE_GLYCOL("ethyleneGlycol", Zone.IODINE, false),

    PLANTS("plants", Zone.PLANTS, false),
    /** Eye limit 10 kJ/m² in a day of 8 h (ICNIRP, from a secondary source): 1000 s at 10 W/m². */
    UV_TORCH("uvTorch", Zone.ULTRAVIOLET, true),
    LAMP("lamp", Zone.LAMPS, false),
    SUN("sun", Zone.LAMPS, false);

    private final String key;
    private final Zone zone;
    private final boolean adultPart;

    Hazard(String key, Zone zone, boolean adultPart) {
        this.key = key;
        this.zone = zone;
        this.adultPart = adultPart;
    }

    public String key() {
        return key;
    }

    public Zone zone() {
        return zone;
    }

    /** GHS codes of the material as supplied; empty where nothing is labelled. */
    public List<String> codes() {
        return switch (this) {
            case ZINC_OXIDE -> List.of("H410");
            case NITRIC_ACID -> List.of("H272", "H290", "H314", "H331", "EUH071");
            case ACETIC_ACID -> List.of("H226", "H314");
            case SODIUM_HYDROXIDE -> List.of("H290", "H314");
            case ALCOHOL -> List.of("H225", "H319", "H336");
            case SPRAY_CAN -> List.of("H222", "H229");
            case IODINE_CRYSTALS -> List.of("H312", "H332", "H315", "H319", "H335", "H372", "H400");
            case ETHYLENE_GLYCOL -> List.of("H302", "H373");
            default -> List.of();
        };
    }

    /** Whether a part of the work is the teacher's alone. */
    public boolean adultPart() {
        return adultPart;
    }

    /** How weaker solutions are labelled, the strongest first; below the last one, not at all. */
    public List<Strength> strengths() {
        return switch (this) {
            case NITRIC_ACID -> List.of(corrosive(5, 0.8), irritant(1, 0.16));
            case ACETIC_ACID -> List.of(corrosive(25, 4.3), irritant(10, 1.7));
            case SODIUM_HYDROXIDE -> List.of(corrosive(2, 0.5), irritant(0.5, 0.125));
            default -> List.of();
        };
    }

    /** Flash point in °C, the lowest of what the name covers; null where none is known or none is needed. */
    public @Nullable Double flashPointC() {
        return switch (this) {
            case ALCOHOL -> 12.0;
            case ACETIC_ACID -> 39.0;
            default -> null;
        };
    }

    /** Temperature in °C at which vapour in air lights by itself, the lowest of what the name covers; null as above. */
    public @Nullable Double selfIgnitionC() {
        return this == ALCOHOL ? 363.0 : null;
    }

    private static Strength corrosive(double fromMassPercent, double fromMolPerL) {
        return new Strength(fromMassPercent, fromMolPerL, List.of("H314"));
    }

    private static Strength irritant(double fromMassPercent, double fromMolPerL) {
        return new Strength(fromMassPercent, fromMolPerL, List.of("H315", "H319"));
    }
}
