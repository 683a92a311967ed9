package org.berrywatt.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.berrywatt.statistics.Resampling;
import org.jspecify.annotations.Nullable;

/** Cells of a class, built up one by one; the one parameter is called {@code it}. */
final class SchoolClass {

    private final List<Subject> subjects = new ArrayList<>();
    private final List<Map<String, Object>> recipes = new ArrayList<>();

    static SchoolClass empty() {
        return new SchoolClass();
    }

    /** Working cells at a level, one performance each, of teams named like the first, second ... letter. */
    SchoolClass sorts(String level, String teams, double... values) {
        for (int i = 0; i < values.length; i++) {
            cell(teams.substring(i, i + 1), values[i], Map.of("it", level));
        }
        return this;
    }

    SchoolClass number(double number, String team, double value) {
        return cell(team, value, Map.of("it", number));
    }

    /** A working cell with several parameters: texts are sorts, numbers are numbers. */
    SchoolClass cell(String team, double value, Map<String, Object> recipe) {
        return add(new Subject("c" + subjects.size(), team, "day", Standing.COUNTS, value), recipe);
    }

    SchoolClass failed(@Nullable Object level, int count) {
        return without(Standing.FAILED, level, count);
    }

    SchoolClass waiting(@Nullable Object level, int count) {
        return without(Standing.WAITING, level, count);
    }

    private SchoolClass without(Standing standing, @Nullable Object level, int count) {
        for (int i = 0; i < count; i++) {
            add(
                    new Subject("c" + subjects.size(), "z", "day", standing, null),
                    level == null ? Map.of() : Map.of("it", level));
        }
        return this;
    }

    SchoolClass add(Subject subject, Map<String, Object> recipe) {
        subjects.add(subject);
        recipes.add(recipe);
        return this;
    }

    Study study() {
        TreeSet<String> names = new TreeSet<>();
        recipes.forEach(recipe -> names.addAll(recipe.keySet()));
        if (names.isEmpty()) {
            names.add("it");
        }
        Map<String, Boolean> numbers = new LinkedHashMap<>();
        names.forEach(name ->
                numbers.put(name, recipes.stream().anyMatch(recipe -> recipe.get(name) instanceof Double)));
        return new Study(
                subjects,
                names.stream()
                        .map(name -> Boolean.TRUE.equals(numbers.get(name)) ? numbers(name) : sorts(name))
                        .toList());
    }

    private Factor numbers(String name) {
        List<@Nullable Double> values = new ArrayList<>();
        recipes.forEach(recipe -> values.add((Double) recipe.get(name)));
        return Factor.ofNumbers(name, values);
    }

    private Factor sorts(String name) {
        List<@Nullable String> values = new ArrayList<>();
        recipes.forEach(recipe -> values.add((String) recipe.get(name)));
        return Factor.ofSorts(name, values);
    }

    StudyFindings findings() {
        return StudyFindings.of(study(), Resampling.seeded(1));
    }

    ParameterFinding finding() {
        return findings().about("it").orElseThrow();
    }

    /** Every team builds one cell of each combination of the levels, with the ratios planted and a little noise. */
    static SchoolClass factorial(int teams, Map<String, List<String>> levels, Map<String, Double> ratios, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SchoolClass cells = empty();
        List<String> names = List.copyOf(new TreeSet<>(levels.keySet()));
        int combinations = levels.values().stream().mapToInt(List::size).reduce(1, (a, b) -> a * b);
        for (int team = 0; team < teams; team++) {
            double good = Math.exp(0.5 * normal(random));
            for (int combination = 0; combination < combinations; combination++) {
                Map<String, Object> recipe = new LinkedHashMap<>();
                double value = good * Math.exp(0.3 * normal(random));
                int rest = combination;
                for (String name : names) {
                    List<String> own = levels.getOrDefault(name, List.of());
                    String level = own.get(rest % own.size());
                    rest /= own.size();
                    recipe.put(name, level);
                    value *= ratios.getOrDefault(level, 1.0);
                }
                cells.cell("team" + team, value, recipe);
            }
        }
        return cells;
    }

    private static double normal(SplittableRandom random) {
        return IntStream.range(0, 12).mapToDouble(i -> random.nextDouble()).sum() - 6;
    }
}
