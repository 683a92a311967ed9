package org.berrywatt.server.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.berrywatt.cell.Stage;
import org.berrywatt.contract.PlanAnswer;
import org.berrywatt.safety.Hazard;
import org.berrywatt.safety.Hazards;

/** What can hurt at the steps of a plan's recipes. */
final class PlanHazards {

    private PlanHazards() {}

    static List<PlanAnswer.Hazard> of(List<Map<String, String>> recipes) {
        var stages = new EnumMap<Hazard, List<String>>(Hazard.class);
        for (var stage : Stage.values()) {
            recipes.stream()
                    .flatMap(recipe -> Hazards.of(stage, recipe).stream())
                    .distinct()
                    .forEach(hazard -> stages.computeIfAbsent(hazard, key -> new ArrayList<>())
                            .add(stage.key()));
        }
        return Arrays.stream(Hazard.values())
                .filter(stages::containsKey)
                .map(hazard -> new PlanAnswer.Hazard(
                        hazard.key(),
                        hazard.zone().key(),
                        hazard.codes(),
                        hazard.adultPart(),
                        stages.getOrDefault(hazard, List.of())))
                .toList();
    }
}
