package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a plan is asked for.
 *
 * @param factors what is varied
 * @param teams number of teams, 1 or more
 * @param cellsPerTeam cells that each team builds, 1 or more
 * @param forbidden combinations that must not be built, level by factor; a factor that is not named may have any level
 * @param seed of every chance in the plan
 */
public record Order(List<Factor> factors, int teams, int cellsPerTeam, List<Map<String, String>> forbidden, long seed) {

    /** Six levels of six cells each use up a class. Common practice, no source. */
    public static final int MOST_LEVELS = 6;

    /** Nobody explains more than six at once to a class. Common practice, no source. */
    public static final int MOST_FACTORS = 6;

    /**
     * The recipes that may be built, as levels by factor.
     *
     * @throws PlanRefused for everything that makes a plan impossible
     */
    List<List<Integer>> recipes() {
        OrderCheck.requireComparable(this);
        var recipes = combinations().stream()
                .filter(recipe -> forbidden.stream().noneMatch(rule -> matches(rule, recipe)))
                .toList();
        OrderCheck.requireEveryLevel(this, recipes);
        return recipes;
    }

    int differences() {
        return factors.stream().mapToInt(factor -> factor.size() - 1).sum();
    }

    private List<List<Integer>> combinations() {
        List<List<Integer>> recipes = List.of(List.of());
        for (var factor : factors) {
            var longer = new ArrayList<List<Integer>>();
            for (var recipe : recipes) {
                for (int level = 0; level < factor.size(); level++) {
                    var more = new ArrayList<>(recipe);
                    more.add(level);
                    longer.add(List.copyOf(more));
                }
            }
            recipes = longer;
        }
        return recipes;
    }

    private boolean matches(Map<String, String> rule, List<Integer> recipe) {
        for (int i = 0; i < factors.size(); i++) {
            var factor = factors.get(i);
            var named = rule.get(factor.key());
            if (named != null && !named.equals(factor.levels().get(recipe.get(i)))) {
                return false;
            }
        }
        return true;
    }
}
