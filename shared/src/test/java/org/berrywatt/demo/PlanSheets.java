package org.berrywatt.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The files about the plan: what it was asked for, what was changed by hand, and which cell was built for which. */
final class PlanSheets {

    private static final int PLACES_ON_A_PLATE = 6;

    /** Until the room is tidied and locked. */
    private static final int MINUTES = 300;

    private PlanSheets() {}

    static Sheet plan() {
        List<Object> row = List.of(
                Scenario.id("plan"),
                Team.ALL.size(),
                3,
                3,
                MINUTES,
                2,
                "1.65",
                25,
                CardPlan.SEED,
                When.of(Scenario.at(11, 32)));
        return new Sheet(
                "plan.csv",
                List.of(
                        "id",
                        "teams",
                        "cells_per_team",
                        "stations",
                        "minutes",
                        "ratio",
                        "spread",
                        "waste_percent",
                        "seed",
                        "at"),
                List.of(row));
    }

    /** What is varied and fixed, and the hot plates with their places. */
    static Sheet parts() {
        List<List<Object>> rows = new ArrayList<>();
        CardPlan.BAKES_C.forEach(bake -> rows.add(List.of("varied", "bakeTemperature", bake, "degC")));
        CardPlan.DYES.forEach(dye -> rows.add(List.of("varied", "dyeSource", dye, "")));
        rows.add(List.of("fixed", "bakeTime", "30", "min"));
        rows.add(List.of("fixed", "substrate", "fto", ""));
        rows.add(List.of("fixed", "electrolyte", "iodideInGlycol", ""));
        List.of("A", "B", "C", "D").forEach(plate -> rows.add(List.of("heater", plate, PLACES_ON_A_PLATE, "")));
        return new Sheet("plan-parts.csv", List.of("part", "name", "text", "unit"), rows);
    }

    static Sheet changes() {
        List<CardPlan.Change> changes = CardPlan.drawn().changes();
        List<List<Object>> rows = IntStream.range(0, changes.size())
                .mapToObj(i -> change(changes.get(i), i))
                .toList();
        return new Sheet("plan-changes.csv", List.of("id", "seen", "label", "parameter", "level", "at"), rows);
    }

    private static List<Object> change(CardPlan.Change change, int index) {
        String label = change.step().label();
        return List.of(
                Scenario.id("plan " + label + " " + change.parameter()),
                index + 1,
                label,
                change.parameter(),
                change.level(),
                When.of(Scenario.at(11, 40).plusSeconds(12L * index)));
    }

    static Sheet cells() {
        List<List<Object>> rows = CardPlan.drawn().steps().stream()
                .sorted(Comparator.comparing(step -> step.built().registered()))
                .map(step -> List.<Object>of(
                        Scenario.id("planned " + step.label()),
                        step.built().id(),
                        step.label(),
                        When.of(step.built().registered())))
                .toList();
        return new Sheet("planned-cells.csv", List.of("id", "cell_id", "label", "at"), rows);
    }
}
