package org.berrywatt.server.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.plan.AlikeCells;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.labday.LabDays;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.springframework.stereotype.Component;

/** How much cells differed on earlier days that one team made alike in what classes compare first. */
@Component
class EarlierDays {

    private static final int LOOKED_AT = 5;
    private static final List<String> ALIKE_IN =
            List.of("oxideSource", "dyeSource", "bakeTemperature", "counterElectrode");

    private final LabDays days;
    private final Cells cells;
    private final Leaderboards leaderboards;

    EarlierDays(LabDays days, Cells cells, Leaderboards leaderboards) {
        this.days = days;
        this.cells = cells;
        this.leaderboards = leaderboards;
    }

    /** @param labDayId the day to plan, which does not count itself */
    AlikeCells spread(UUID labDayId, Caller caller) {
        var groups = new ArrayList<List<Double>>();
        days.list(caller).stream()
                .map(LabDayAnswer::id)
                .filter(day -> !day.equals(labDayId))
                .limit(LOOKED_AT)
                .forEach(day -> groups.addAll(groups(day)));
        return AlikeCells.of(groups);
    }

    private List<List<Double>> groups(UUID day) {
        var recipes = cells.ofLabDay(day).stream().collect(Collectors.toMap(Cell::id, EarlierDays::recipe));
        return leaderboards.of(day).teams().stream()
                .flatMap(team -> groups(team, recipes).values().stream())
                .toList();
    }

    private static Map<String, List<Double>> groups(TeamStanding team, Map<UUID, String> recipes) {
        var groups = new HashMap<String, List<Double>>();
        for (CellStanding cell : team.cells()) {
            var power = cell.powerDensityWm2();
            var recipe = recipes.get(cell.cellId());
            if (power != null && power.value() > 0 && recipe != null) {
                groups.computeIfAbsent(recipe, key -> new ArrayList<>()).add(power.value());
            }
        }
        return groups;
    }

    private static String recipe(Cell cell) {
        return ALIKE_IN.stream()
                .map(parameter -> cell.entry(parameter).map(RecipeEntry::text).orElse(""))
                .collect(Collectors.joining("|"));
    }
}
