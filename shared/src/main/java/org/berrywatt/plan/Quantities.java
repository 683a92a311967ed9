package org.berrywatt.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What to have ready for the cells of a plan. A cell takes two plates of glass, some 0.3 g of oxide and 0.4 mL of acid (6 g
 * to 9 mL: Smestad and Graetzel 1998, from memory), 4 g of plants and 5 mL of dye, 0.3 mL of electrolyte with what stays in
 * the dropper, 6.5 mL of alcohol and two clips. For 24 cells and a quarter of waste that makes the 60 plates, 6 to 10 g of
 * oxide, 10 to 15 mL of acid, 10 mL of electrolyte and less than 200 mL of alcohol that schools count on (common practice,
 * no source).
 */
public final class Quantities {

    /** Share that breaks, sticks or is spilt. Common practice, no source. */
    public static final double USUAL_WASTE = 0.25;

    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.CEILING);

    private final List<Map<String, String>> recipes;
    private final double waste;

    private Quantities(List<Map<String, String>> recipes, double waste) {
        this.recipes = recipes;
        this.waste = waste;
    }

    /**
     * What these cells take in all, with waste.
     *
     * @param recipes level keys by build parameter, one for each cell; a parameter may be missing
     * @param waste share to add, in [0, infinity)
     */
    public static List<Need> of(List<Map<String, String>> recipes, double waste) {
        var quantities = new Quantities(recipes, waste);
        var needs = new ArrayList<Need>();
        needs.addAll(quantities.each("glass", "substrate", 2, "count"));
        needs.addAll(quantities.each("oxide", "oxideSource", 0.28, "g"));
        needs.addAll(quantities.each("pasteLiquid", "pasteAcid", 0.42, "mL"));
        needs.addAll(quantities.each("plants", "dyeSource", 4, "g"));
        needs.addAll(quantities.each("dye", "dyeSource", 5, "mL"));
        needs.addAll(quantities.each("counterElectrode", "counterElectrode", 1, "count"));
        needs.addAll(quantities.each("electrolyte", "electrolyte", 0.32, "mL"));
        needs.addAll(quantities.each("alcohol", "", 6.5, "mL"));
        needs.addAll(quantities.each("clips", "", 2, "count"));
        return needs;
    }

    /** One line for each level of the parameter; cells of which it is not said share a line. No dye needs none. */
    private List<Need> each(String key, String parameter, double perCell, String unit) {
        var cells = new LinkedHashMap<String, Integer>();
        recipes.forEach(recipe -> cells.merge(recipe.getOrDefault(parameter, ""), 1, Integer::sum));
        return cells.entrySet().stream()
                .filter(entry -> !entry.getKey().equals("none"))
                .map(entry -> need(key, parameter, entry.getKey(), entry.getValue(), perCell, unit))
                .toList();
    }

    private Need need(String key, String parameter, String level, int cells, double perCell, String unit) {
        var exact =
                BigDecimal.valueOf(cells).multiply(BigDecimal.valueOf(perCell)).multiply(BigDecimal.valueOf(1 + waste));
        var amount = unit.equals("count") ? exact.setScale(0, RoundingMode.CEILING) : exact.round(TWO_DIGITS);
        return new Need(key, level.isEmpty() ? "" : parameter, level, cells, amount.doubleValue(), unit);
    }
}
