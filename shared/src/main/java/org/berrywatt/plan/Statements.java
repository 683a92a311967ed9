package org.berrywatt.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.berrywatt.plan.Statement.Weight;

/** What a plan can tell, in sentences: one for each factor, then what holds for all. */
public final class Statements {

    private final Wish wish;

    private Statements(Wish wish) {
        this.wish = wish;
    }

    public static List<Statement> of(PlanFigures figures, Wish wish) {
        var words = new Statements(wish);
        var sentences = new ArrayList<Statement>();
        figures.factors().forEach(factor -> sentences.add(words.about(factor)));
        figures.factors().stream()
                .filter(factor -> !factor.balanced())
                .forEach(factor ->
                        sentences.add(Statement.of("unbalanced", Weight.NOTE, Map.of("factor", key(factor)))));
        if (figures.teams() == 1) {
            sentences.add(Statement.of("oneTeam", Weight.WEAK, Map.of()));
        }
        interplay(figures).ifPresent(sentences::add);
        return sentences;
    }

    private Statement about(FactorFigures factor) {
        if (factor.teamsComparing() == 0) {
            return Statement.of("teamsOnly", Weight.CANNOT, Map.of("factor", key(factor)));
        }
        return factor.efficiency() > 0 ? estimable(factor) : mixed(factor);
    }

    private Statement mixed(FactorFigures factor) {
        return factor.aliases().stream()
                .filter(alias -> alias.whole() && alias.with().size() == 1)
                .findFirst()
                .map(alias -> Statement.of(
                        "mixed",
                        Weight.CANNOT,
                        Map.of("factor", key(factor), "other", alias.with().get(0))))
                .orElseGet(() -> Statement.of("cannotTell", Weight.CANNOT, Map.of("factor", key(factor))));
    }

    private Statement estimable(FactorFigures factor) {
        if (factor.power() == null) {
            return Statement.of("noSpare", Weight.CANNOT, Map.of("factor", key(factor)));
        }
        Map<String, Object> common = Map.of(
                "factor", key(factor),
                "ratio", wish.ratio(),
                "chance", Math.round(100 * factor.power()),
                "smallest", Objects.requireNonNull(factor.smallestRatio()));
        return factor.answers() ? Statement.of("answers", Weight.GOOD, common) : weak(factor, common);
    }

    private static Statement weak(FactorFigures factor, Map<String, Object> common) {
        var cells = factor.cellsPerTeamNeeded();
        var teams = factor.teamsNeeded();
        var values = new HashMap<>(common);
        Optional.ofNullable(cells).ifPresent(needed -> values.put("cells", needed));
        Optional.ofNullable(teams).ifPresent(needed -> values.put("teams", needed));
        var key = cells == null ? (teams == null ? "weak" : "weakTeams") : (teams == null ? "weakCells" : "weakBoth");
        return Statement.of(key, Weight.WEAK, Map.copyOf(values));
    }

    private static Optional<Statement> interplay(PlanFigures figures) {
        return figures.factors().stream()
                .flatMap(factor -> factor.aliases().stream()
                        .filter(alias -> alias.with().size() == 2)
                        .limit(1)
                        .map(alias -> Statement.of(
                                "interplay",
                                Weight.NOTE,
                                Map.of(
                                        "factor", key(factor),
                                        "other", alias.with().get(0),
                                        "third", alias.with().get(1)))))
                .findFirst();
    }

    private static String key(FactorFigures factor) {
        return factor.factor().key();
    }
}
