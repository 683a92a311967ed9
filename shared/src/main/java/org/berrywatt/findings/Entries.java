package org.berrywatt.findings;

import static java.util.stream.Collectors.groupingBy;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.berrywatt.statistics.Answer;
import org.berrywatt.statistics.KruskalWallis;
import org.berrywatt.statistics.Quantiles;
import org.berrywatt.statistics.Spearman;

/**
 * What enters the rank tests. Cells of one team share hands, paste and plate, so when no team tried two levels the level
 * was drawn once per team: then every team enters once, with the median of its cells.
 */
record Entries(List<Worked> entries, boolean teamsOnly) {

    static Entries of(List<Worked> cells) {
        Collection<List<Worked>> teams = by(cells, Worked::team).values();
        boolean teamsOnly = teams.stream().allMatch(Entries::shareOneLevel);
        return new Entries(teamsOnly ? teams.stream().map(Entries::median).toList() : cells, teamsOnly);
    }

    private static boolean shareOneLevel(List<Worked> team) {
        return team.stream().map(Worked::level).distinct().count() == 1;
    }

    private static Worked median(List<Worked> team) {
        Worked any = team.get(0);
        return new Worked(
                any.team(),
                any.level(),
                any.number(),
                Quantiles.median(powers(team)).orElseThrow());
    }

    private static Map<String, List<Worked>> by(List<Worked> cells, Function<Worked, String> property) {
        return cells.stream().collect(groupingBy(property, LinkedHashMap::new, Collectors.toList()));
    }

    int size() {
        return entries.size();
    }

    Answer<KruskalWallis> kruskalWallis() {
        return KruskalWallis.of(by(entries, Worked::level).values().stream()
                .map(Entries::powers)
                .toList());
    }

    /** Only for numbers. */
    Answer<Spearman> spearman() {
        double[] numbers = entries.stream()
                .mapToDouble(entry -> Objects.requireNonNull(entry.number()))
                .toArray();
        return Spearman.of(numbers, powers(entries));
    }

    private static double[] powers(List<Worked> cells) {
        return cells.stream().mapToDouble(Worked::powerWm2).toArray();
    }
}
