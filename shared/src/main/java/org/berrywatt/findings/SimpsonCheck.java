package org.berrywatt.findings;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks for something that turns a difference round once cells are compared within it: teams, and every other parameter. */
final class SimpsonCheck {

    private SimpsonCheck() {}

    static Optional<Sentence> of(Study study, Look look) {
        Level best = look.levels().best().orElseThrow();
        Level worst = look.levels().worst().orElseThrow();
        Factor factor = look.factor();
        int[] cells = Arrays.stream(factor.recordedAmong(study.working()))
                .filter(cell -> at(factor, cell, best) || at(factor, cell, worst))
                .toArray();
        return Stream.concat(
                        byTeam(study, factor, cells, best),
                        study.factors().stream()
                                .filter(other -> other != factor)
                                .flatMap(other -> byOther(study, factor, other, cells, best)))
                .findFirst()
                .map(values -> Sentence.of(
                        values.containsKey("otherParameter") ? "turned.parameter" : "turned.team",
                        with(values, best, worst)));
    }

    private static boolean at(Factor factor, int cell, Level level) {
        return factor.levels().get(factor.code(cell)).equals(level.key());
    }

    private static Stream<Map<String, Object>> byTeam(Study study, Factor factor, int[] cells, Level best) {
        return turned(study, factor, cells, Confounding.dense(study.teamsOf(cells)), best)
                ? Stream.of(Map.of())
                : Stream.empty();
    }

    private static Stream<Map<String, Object>> byOther(
            Study study, Factor factor, Factor other, int[] cells, Level best) {
        int[] both = other.recordedAmong(cells);
        return turned(study, factor, both, Confounding.dense(other.groups(both, Levels.FEW)), best)
                ? Stream.of(Map.of("otherParameter", other.key()))
                : Stream.empty();
    }

    private static boolean turned(Study study, Factor factor, int[] cells, int[] groups, Level best) {
        boolean[] atBest = new boolean[cells.length];
        for (int i = 0; i < cells.length; i++) {
            atBest[i] = at(factor, cells[i], best);
        }
        return Simpson.turned(study.logsOf(cells), atBest, groups).isPresent();
    }

    private static Map<String, Object> with(Map<String, Object> values, Level best, Level worst) {
        Map<String, Object> all = new HashMap<>(values);
        all.put("bestLevel", best.key());
        all.put("worstLevel", worst.key());
        return Map.copyOf(all);
    }
}
