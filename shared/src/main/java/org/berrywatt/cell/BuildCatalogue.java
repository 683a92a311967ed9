package org.berrywatt.cell;

import static org.berrywatt.cell.BuildParameter.number;
import static org.berrywatt.cell.BuildParameter.sort;

import java.util.List;
import java.util.Optional;
import org.berrywatt.light.DyeFamily;

/**
 * The one list of build parameters. Forms, validation, findings and the plan all read it; a new parameter is a new line here
 * with its texts.
 */
public final class BuildCatalogue {

    private static final List<BuildParameter> ALL = List.of(
            sort(
                    "oxideSource",
                    Stage.FILM,
                    "mixedPhaseTitania",
                    "anataseTitania",
                    "readyPaste",
                    "pigmentTitania",
                    "cosmeticTitania",
                    "zincOxide",
                    "tinOxide",
                    "chalkMix",
                    "other"),
            sort("dyeSource", Stage.DYE, DyeSource.keys()),
            number(Stage.BAKE, BuildFields.BAKE_TEMPERATURE),
            number(Stage.BAKE, BuildFields.BAKE_TIME),
            sort("substrate", Stage.FILM, "fto", "ito", "unknownCoating", "metal", "pencilOnGlass", "other"),
            number(Stage.FILM, BuildFields.GLASS_RESISTANCE),
            sort("cleaning", Stage.FILM, "detergentWaterAlcohol", "detergentWater", "alcoholOnly", "wipedOnly", "none"),
            sort("pasteAcid", Stage.FILM, "acetic", "vinegar", "nitric", "citric", "waterOnly", "readyPaste", "other"),
            number(Stage.FILM, BuildFields.PASTE_ACIDITY),
            number(Stage.FILM, BuildFields.GRIND_TIME),
            number(Stage.FILM, BuildFields.TAPE_LAYERS),
            sort("coat", Stage.FILM, "glassRod", "cardEdge", "brush", "dropped", "other"),
            number(Stage.FILM, BuildFields.DRY_TIME),
            sort(
                    "heater",
                    Stage.BAKE,
                    "ceramicPlate",
                    "metalPlate",
                    "burnerOnGauze",
                    "oven",
                    "hotAir",
                    "none",
                    "other"),
            sort("temperatureFrom", Stage.BAKE, "thermocouple", "infrared", "heaterSetting", "filmColour", "estimate"),
            sort("dyeSolvent", Stage.DYE, "water", "acidWater", "alcohol", "acidAlcohol", "juice", "other"),
            number(Stage.DYE, BuildFields.SOAK_TIME),
            sort("rinse", Stage.DYE, "waterThenAlcohol", "water", "alcohol", "none"),
            sort(
                    "counterElectrode",
                    Stage.COUNTER_ELECTRODE,
                    "candleSoot",
                    "pencil",
                    "graphiteSpray",
                    "graphitePaste",
                    "batteryCarbon",
                    "platinum",
                    "bareGlass",
                    "other"),
            sort(
                    "electrolyte",
                    Stage.FILL,
                    "iodideInGlycol",
                    "iodideInPropyleneGlycol",
                    "iodideInAlcohol",
                    "iodideInWater",
                    "antisepticIodine",
                    "gel",
                    "other"),
            number(Stage.FILL, BuildFields.ELECTROLYTE_DROPS),
            sort("spacer", Stage.FILL, "none", "tape", "plasticFilm", "other"),
            sort("seal", Stage.FILL, "none", "tape", "hotMelt", "wax", "other"),
            sort("lightSide", Stage.MEASURE, "oxideSide", "counterSide"));

    private BuildCatalogue() {}

    /** Every parameter; the four that every class records come first. */
    public static List<BuildParameter> all() {
        return ALL;
    }

    /** The parameter of a key, or empty when there is none. */
    public static Optional<BuildParameter> of(String key) {
        return ALL.stream().filter(parameter -> parameter.key().equals(key)).findFirst();
    }

    /** The family of a dye source's main pigment; {@link DyeFamily#OTHER} for a level that the catalogue does not know. */
    public static DyeFamily dyeFamilyOf(String dyeSourceKey) {
        return DyeSource.familyOf(dyeSourceKey);
    }
}
