package org.berrywatt.server.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.berrywatt.contract.PlanRequest;
import org.berrywatt.plan.Heater;
import org.berrywatt.plan.Order;
import org.berrywatt.plan.Workshop;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;

/**
 * A plan's settings, understood.
 *
 * @param forbidden level numbers by parameter
 */
record PlanSettings(
        PlanRequest request, List<Varied> varied, List<RecipeEntry> fixed, List<Map<String, String>> forbidden) {

    /**
     * @throws Refusal for whatever is unknown, out of range or said twice
     */
    static PlanSettings of(PlanRequest request, Cells cells) {
        SettingsBounds.require(request);
        var reader = new SettingsReader(cells, new HashSet<>());
        var varied = new ArrayList<Varied>();
        for (var factor : Given.need("factors", request.factors())) {
            varied.add(reader.varied("factors[" + varied.size() + "]", factor));
        }
        var fixed = new ArrayList<RecipeEntry>();
        for (var value : Given.need("fixed", request.fixed())) {
            fixed.add(reader.fixed("fixed[" + fixed.size() + "]", value));
        }
        var forbidden = Given.need("forbidden", request.forbidden()).stream()
                .map(rule -> reader.rule(rule, varied))
                .toList();
        return new PlanSettings(request, List.copyOf(varied), List.copyOf(fixed), forbidden);
    }

    Order order(long seed) {
        return new Order(
                varied.stream().map(Varied::factor).toList(), request.teams(), request.cellsPerTeam(), forbidden, seed);
    }

    Workshop workshop() {
        var heaters = request.heaters().stream()
                .map(heater -> new Heater(heater.name(), heater.positions()))
                .toList();
        return new Workshop(heaters, request.stations(), request.minutes());
    }

    /** The whole recipe of a planned cell: what is varied, then what is the same for all. */
    List<RecipeEntry> recipe(List<Integer> levels) {
        var own = new ArrayList<RecipeEntry>();
        for (int i = 0; i < varied.size(); i++) {
            own.add(varied.get(i).levels().get(levels.get(i)));
        }
        return Stream.concat(own.stream(), fixed.stream()).toList();
    }
}
