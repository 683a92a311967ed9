package org.berrywatt.server.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.berrywatt.contract.PlannedCellAnswer;
import org.berrywatt.contract.PlannedCellAnswer.Deviation;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.team.Team;
import org.berrywatt.server.team.Teams;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What became of planned cells. Teams take their place in the plan in the order in which they join. */
@Component
class PlannedCells {

    private final PlannedCellRepository words;
    private final Cells cells;
    private final Teams teams;

    PlannedCells(PlannedCellRepository words, Cells cells, Teams teams) {
        this.words = words;
        this.cells = cells;
        this.teams = teams;
    }

    List<PlannedCellAnswer> answers(UUID labDayId, List<Planned> planned) {
        var made = madeByLabel(labDayId);
        var byNumber =
                teams.ofLabDay(labDayId).stream().collect(Collectors.toMap(PlannedCells::number, Function.identity()));
        return planned.stream()
                .map(each -> answer(each, byNumber.get(each.team()), made.get(each.label())))
                .toList();
    }

    static int number(Team team) {
        return team.mark() + 1;
    }

    /** The registered cell of each planned label, by the latest word about each cell. */
    private Map<String, Cell> madeByLabel(UUID labDayId) {
        var labels = new HashMap<UUID, Optional<String>>();
        words.findByLabDayIdOrderByAcceptedAtAscIdAsc(labDayId)
                .forEach(word -> labels.put(word.cellId(), Optional.ofNullable(word.label())));
        var made = new HashMap<String, Cell>();
        cells.ofLabDay(labDayId)
                .forEach(cell -> labels.getOrDefault(cell.id(), Optional.empty())
                        .ifPresent(label -> made.putIfAbsent(label, cell)));
        return made;
    }

    private static PlannedCellAnswer answer(Planned planned, @Nullable Team team, @Nullable Cell made) {
        return new PlannedCellAnswer(
                planned.label(),
                planned.kind(),
                planned.team(),
                team == null ? null : team.id(),
                team == null ? null : team.name(),
                planned.levels(),
                planned.recipe().stream().map(Recipes::value).toList(),
                planned.byHand(),
                made == null ? null : made.id(),
                made == null ? null : made.label(),
                made == null ? List.of() : deviations(planned.recipe(), made));
    }

    /** What is not recorded yet is no deviation. */
    private static List<Deviation> deviations(List<RecipeEntry> planned, Cell made) {
        return planned.stream()
                .flatMap(entry -> made
                        .entry(entry.parameter())
                        .filter(recorded -> !Recipes.asPlanned(entry, recorded))
                        .map(recorded -> new Deviation(Recipes.value(entry), Recipes.value(recorded)))
                        .stream())
                .toList();
    }
}
