package org.berrywatt.server.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.PlanRequest.PlanFactor;
import org.berrywatt.contract.PlanRequest.PlanForbidden;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.cell.RecipeEntry;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;

/** Reads values; each parameter may come once. */
record SettingsReader(Cells cells, Set<String> taken) {

    private static final int LONGEST_NAME = 24;

    Varied varied(String path, PlanFactor factor) {
        var parameter = takeOnce(path, Words.line(path + ".parameter", factor.parameter(), LONGEST_NAME));
        var levels = new ArrayList<RecipeEntry>();
        var varied = new Varied(parameter, levels);
        for (var level : Given.need(path + ".levels", factor.levels())) {
            var entry = entry(path + ".levels[" + levels.size() + "]", parameter, level);
            levels.add(entry);
        }
        return varied;
    }

    RecipeEntry fixed(String path, BuildValue value) {
        takeOnce(path, Given.need(path, value.parameter()));
        return cells.understand(path, value);
    }

    Map<String, String> rule(PlanForbidden rule, List<Varied> varied) {
        var levels = new HashMap<String, String>();
        for (var value : Given.need("forbidden", rule.levels())) {
            var factor = varied.stream()
                    .filter(each -> each.parameter().equals(value.parameter()))
                    .findFirst()
                    .orElseThrow(() -> Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                            .field("forbidden")
                            .value(value.parameter())
                            .limit(String.join(", ", taken)));
            var entry = entry("forbidden", factor.parameter(), new Typed(value.text(), value.unit()));
            levels.put(factor.parameter(), String.valueOf(factor.indexOf(entry)));
        }
        return Map.copyOf(levels);
    }

    private RecipeEntry entry(String path, String parameter, Typed level) {
        return BuildCatalogue.of(parameter).isPresent()
                ? cells.understand(path, new BuildValue(parameter, level.text(), level.unit()))
                : new RecipeEntry(parameter, Words.line(path, level.text(), LONGEST_NAME), null, null);
    }

    private String takeOnce(String path, String parameter) {
        if (taken.add(parameter)) {
            return parameter;
        }
        throw Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                .field(path)
                .value(parameter)
                .limit(String.join(", ", open()));
    }

    private List<String> open() {
        return BuildCatalogue.all().stream()
                .map(parameter -> parameter.key())
                .filter(key -> !taken.contains(key))
                .toList();
    }
}
