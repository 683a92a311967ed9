package org.berrywatt.server.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.berrywatt.plan.Factor;
import org.berrywatt.server.cell.RecipeEntry;

/**
 * Something that a plan varies, understood.
 *
 * @param parameter key of a build parameter, or the class's own name
 * @param levels as they would stand in a recipe
 */
record Varied(String parameter, List<RecipeEntry> levels) {

    /** Levels are told apart by their number, so that "450" and "450,0" may not hide behind one key. */
    Factor factor() {
        return new Factor(
                parameter,
                IntStream.range(0, levels.size()).mapToObj(String::valueOf).toList());
    }

    /** Whether a level is there twice. */
    boolean repeats() {
        return IntStream.range(0, levels.size()).anyMatch(i -> indexOf(levels.get(i)) < i);
    }

    int indexOf(RecipeEntry entry) {
        return IntStream.range(0, levels.size())
                .filter(i -> Recipes.alike(levels.get(i), entry))
                .findFirst()
                .orElse(-1);
    }
}
