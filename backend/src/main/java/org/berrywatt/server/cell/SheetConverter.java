package org.berrywatt.server.cell;

import java.util.ArrayList;
import java.util.List;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.Typed;
import org.berrywatt.quantity.Field;
import org.berrywatt.reading.Fields;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.TypedValues;
import org.berrywatt.server.typed.TypedValues.Unusual;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** Reads a build sheet: recipe and area as typed. */
final class SheetConverter {

    private static final int LONGEST_WORDS = 60;

    private final List<String> open = new ArrayList<>(BuildKeys.PARAMETERS);
    private final List<RecipeEntry> recipe = new ArrayList<>();

    private SheetConverter() {}

    /**
     * What a sheet says. Values that were left empty are left out.
     *
     * @throws org.berrywatt.server.platform.Refusal for a parameter that is unknown or named twice, a level that is not
     *     one of its choices, or a number or words that are refused
     */
    static BuildContent content(@Nullable List<BuildValue> values, @Nullable Typed area) {
        var converter = new SheetConverter();
        var given = Given.need("recipe", values);
        for (int i = 0; i < given.size(); i++) {
            converter.add("recipe[" + i + "]", Given.need("recipe[" + i + "]", given.get(i)));
        }
        return new BuildContent(converter.recipe, area(area));
    }

    /**
     * One value of a recipe, out of all the catalogue knows.
     *
     * @throws org.berrywatt.server.platform.Refusal as for {@link #content}
     */
    static RecipeEntry value(String path, BuildValue value) {
        var key = Given.choice(path + ".parameter", value.parameter(), BuildKeys.PARAMETERS);
        return entry(path + ".text", BuildCatalogue.of(key).orElseThrow(), value);
    }

    private void add(String path, BuildValue value) {
        var key = Given.choice(path + ".parameter", value.parameter(), open);
        open.remove(key);
        if (!TypedValues.isLeftOut(typed(value))) {
            recipe.add(entry(path, BuildCatalogue.of(key).orElseThrow(), value));
        }
    }

    private static RecipeEntry entry(String path, BuildParameter parameter, BuildValue value) {
        var field = parameter.field();
        return field == null ? sort(path, parameter, value) : number(path + ".text", field, value);
    }

    private static RecipeEntry sort(String path, BuildParameter parameter, BuildValue value) {
        var level = Given.choice(path + ".text", value.text(), parameter.levelKeys());
        var words = parameter.openLevelKeys().contains(level) ? words(path + ".words", value.words()) : null;
        return new RecipeEntry(parameter.key(), level, null, null, words);
    }

    private static @Nullable String words(String path, @Nullable String typed) {
        return typed == null || typed.isBlank() ? null : Words.line(path, typed, LONGEST_WORDS);
    }

    private static RecipeEntry number(String path, Field field, BuildValue value) {
        var amount = TypedValues.number(path, typed(value), Unusual.TAKE, field);
        return new RecipeEntry(value.parameter(), amount.text(), amount.unitKey(), amount.valueSi(), null);
    }

    private static @Nullable TypedCellArea area(@Nullable Typed typed) {
        if (typed == null || TypedValues.isLeftOut(typed)) {
            return null;
        }
        var area = TypedValues.area("area", typed, Fields.AREA);
        return new TypedCellArea(area.amount().text(), typed.unit(), area.areaM2(), area.standardUncertaintyM2());
    }

    private static Typed typed(BuildValue value) {
        return new Typed(value.text(), value.unit());
    }
}
