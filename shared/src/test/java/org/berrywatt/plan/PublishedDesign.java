package org.berrywatt.plan;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** A design of test resources {@code plan/}; its first lines name the published source. */
final class PublishedDesign {

    private PublishedDesign() {}

    /** An array whose runs are all of one team. */
    static Design array(String name) throws IOException {
        var rows = rows(name);
        return design(rows.stream().map(row -> new Run(0, row)).toList());
    }

    /** A block design of one factor. */
    static Design blocks(String name) throws IOException {
        return design(rows(name).stream()
                .map(row -> new Run(row.get(0), List.of(row.get(1))))
                .toList());
    }

    /** Every combination of levels of the factors. */
    static List<List<Integer>> recipes(List<Factor> factors) {
        List<List<Integer>> recipes = List.of(List.of());
        for (var factor : factors) {
            recipes = recipes.stream()
                    .flatMap(recipe -> IntStream.range(0, factor.size())
                            .mapToObj(level -> IntStream.concat(
                                            recipe.stream().mapToInt(each -> each), IntStream.of(level))
                                    .boxed()
                                    .toList()))
                    .toList();
        }
        return recipes;
    }

    static Factor factor(String key, int levels) {
        return new Factor(
                key, IntStream.range(0, levels).mapToObj(level -> key + level).toList());
    }

    private static Design design(List<Run> runs) {
        int count = runs.get(0).levels().size();
        return new Design(
                IntStream.range(0, count)
                        .mapToObj(i -> factor(
                                String.valueOf((char) ('A' + i)),
                                runs.stream()
                                                .mapToInt(run -> run.levels().get(i))
                                                .max()
                                                .orElseThrow()
                                        + 1))
                        .toList(),
                runs);
    }

    private static List<List<Integer>> rows(String name) throws IOException {
        try (var in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(PublishedDesign.class.getResourceAsStream("/plan/" + name + ".csv"), name),
                StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line ->
                            Arrays.stream(line.split(",")).map(Integer::valueOf).toList())
                    .toList();
        }
    }
}
