package org.berrywatt.server.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.quantity.Quantity;
import org.berrywatt.quantity.Units;
import org.berrywatt.server.cell.RecipeEntry;
import org.jspecify.annotations.Nullable;

/** Recipes compared and translated. */
final class Recipes {

    private static final double ALIKE = 1e-9;

    /** A bake meant for 450 °C and measured within 15 K was built as planned. Common practice, no source. */
    private static final double TEMPERATURE_TOLERANCE_K = 15;

    /** So was a time within a tenth. Common practice, no source. */
    private static final double TOLERANCE = 0.1;

    private Recipes() {}

    /** Whether two entries mean the same. */
    static boolean alike(RecipeEntry one, RecipeEntry other) {
        return within(one, other, ALIKE * Math.abs(orZero(one.valueSi())));
    }

    /** Whether a cell was built as planned in this. */
    static boolean asPlanned(RecipeEntry planned, RecipeEntry made) {
        return within(
                planned,
                made,
                isTemperature(planned) ? TEMPERATURE_TOLERANCE_K : TOLERANCE * Math.abs(orZero(planned.valueSi())));
    }

    static BuildValue value(RecipeEntry entry) {
        return new BuildValue(entry.parameter(), entry.text(), entry.unit());
    }

    /** Level keys by parameter, for what the science knows by keys. */
    static Map<String, String> sorts(List<RecipeEntry> recipe) {
        var sorts = new HashMap<String, String>();
        recipe.stream()
                .filter(entry -> entry.valueSi() == null
                        && BuildCatalogue.of(entry.parameter()).isPresent())
                .forEach(entry -> sorts.put(entry.parameter(), entry.text()));
        return sorts;
    }

    /** A number of a recipe in a unit. */
    static double number(List<RecipeEntry> recipe, String parameter, String unitKey, double otherwise) {
        return recipe.stream()
                .filter(entry -> entry.parameter().equals(parameter))
                .map(RecipeEntry::valueSi)
                .flatMap(value -> Optional.ofNullable(value).stream())
                .map(Units.of(unitKey).orElseThrow()::fromSi)
                .findFirst()
                .orElse(otherwise);
    }

    private static boolean within(RecipeEntry one, RecipeEntry other, double toleranceSi) {
        var a = one.valueSi();
        var b = other.valueSi();
        return (a == null || b == null) ? one.text().equals(other.text()) : Math.abs(a - b) <= toleranceSi;
    }

    private static boolean isTemperature(RecipeEntry entry) {
        return BuildCatalogue.of(entry.parameter())
                .map(parameter -> parameter.field())
                .filter(field -> field.quantity() == Quantity.TEMPERATURE)
                .isPresent();
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
