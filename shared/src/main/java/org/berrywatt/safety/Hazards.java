package org.berrywatt.safety;

import static org.berrywatt.cell.Stage.BAKE;
import static org.berrywatt.cell.Stage.COUNTER_ELECTRODE;
import static org.berrywatt.cell.Stage.DYE;
import static org.berrywatt.cell.Stage.FILL;
import static org.berrywatt.cell.Stage.FILM;
import static org.berrywatt.cell.Stage.MEASURE;
import static org.berrywatt.safety.Trigger.always;
import static org.berrywatt.safety.Trigger.with;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.Stage;

/**
 * Which stage and which recipe bring which hazards. What nobody recorded counts as the usual way of a school recipe (common
 * practice, no source): titania powder, a hot plate, a candle; but no bottle of acid, since teams get a paste liquid that is
 * made up for them.
 */
public final class Hazards {

    private static final List<Trigger> TRIGGERS = List.of(
            always(Hazard.GLASS_EDGES, FILM),
            with(
                            Hazard.TITANIA_POWDER,
                            FILM,
                            "oxideSource",
                            "mixedPhaseTitania",
                            "anataseTitania",
                            "pigmentTitania",
                            "cosmeticTitania")
                    .orUnrecorded(),
            with(Hazard.ZINC_OXIDE, FILM, "oxideSource", "zincOxide", "chalkMix"),
            with(Hazard.OTHER_POWDER, FILM, "oxideSource", "tinOxide", "chalkMix", "other"),
            with(Hazard.NITRIC_ACID, FILM, "pasteAcid", "nitric"),
            with(Hazard.ACETIC_ACID, FILM, "pasteAcid", "acetic"),
            with(Hazard.ALCOHOL, FILM, "cleaning", "detergentWaterAlcohol", "alcoholOnly")
                    .orUnrecorded(),
            with(
                            Hazard.HOT_PLATE,
                            BAKE,
                            "heater",
                            "ceramicPlate",
                            "metalPlate",
                            "burnerOnGauze",
                            "oven",
                            "hotAir",
                            "other")
                    .orUnrecorded(),
            with(Hazard.BURNER, BAKE, "heater", "burnerOnGauze"),
            with(Hazard.PLANTS, DYE, "dyeSource", plants()).orUnrecorded(),
            with(Hazard.ALCOHOL, DYE, "dyeSolvent", "alcohol", "acidAlcohol"),
            with(Hazard.ALCOHOL, DYE, "rinse", "waterThenAlcohol", "alcohol").orUnrecorded(),
            always(Hazard.GLASS_EDGES, COUNTER_ELECTRODE),
            with(Hazard.CANDLE, COUNTER_ELECTRODE, "counterElectrode", "candleSoot", "other")
                    .orUnrecorded(),
            with(Hazard.SPRAY_CAN, COUNTER_ELECTRODE, "counterElectrode", "graphiteSpray"),
            // A platinum salt becomes platinum at about 400 °C (common practice, no source).
            with(Hazard.HOT_PLATE, COUNTER_ELECTRODE, "counterElectrode", "platinum"),
            always(Hazard.IODIDE_SOLUTION, FILL),
            with(Hazard.ETHYLENE_GLYCOL, FILL, "electrolyte", "iodideInGlycol").orUnrecorded(),
            with(Hazard.ALCOHOL, FILL, "electrolyte", "iodideInAlcohol"),
            with(Hazard.HOT_GLUE, FILL, "seal", "hotMelt", "wax"),
            always(Hazard.LAMP, MEASURE),
            always(Hazard.SUN, MEASURE));

    private Hazards() {}

    /** Every trigger, in the order of the bench. */
    public static List<Trigger> triggers() {
        return TRIGGERS;
    }

    /**
     * The hazards of a stage, in the order of its work.
     *
     * @param recipe level keys by build parameter; a parameter that is not in it is not recorded
     */
    public static List<Hazard> of(Stage stage, Map<String, String> recipe) {
        return TRIGGERS.stream()
                .filter(trigger -> trigger.stage() == stage && trigger.isThere(recipe))
                .map(Trigger::hazard)
                .distinct()
                .toList();
    }

    /** The zones that a team must be signed off for before this stage counts as done. */
    public static Set<Zone> gatesOf(Stage stage, Map<String, String> recipe) {
        return of(stage, recipe).stream().map(Hazard::zone).filter(Zone::gated).collect(Collectors.toUnmodifiableSet());
    }

    private static String[] plants() {
        return BuildCatalogue.of("dyeSource").orElseThrow().levelKeys().stream()
                .filter(level -> !level.equals("none"))
                .toArray(String[]::new);
    }
}
