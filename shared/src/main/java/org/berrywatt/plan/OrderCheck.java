package org.berrywatt.plan;

import java.util.List;

/** Refuses orders from which no plan follows. */
final class OrderCheck {

    private OrderCheck() {}

    static void requireComparable(Order order) {
        int factors = order.factors().size();
        if (factors == 0) {
            throw refused(PlanFault.NO_FACTOR, "", 0, 1, "nothing is varied; choose one thing to compare");
        }
        if (factors > Order.MOST_FACTORS) {
            throw refused(PlanFault.TOO_MANY_FACTORS, "", factors, Order.MOST_FACTORS, "hold some of them fixed");
        }
        order.factors().forEach(OrderCheck::requireLevels);
        requireCells(order);
    }

    static void requireEveryLevel(Order order, List<List<Integer>> recipes) {
        if (recipes.isEmpty()) {
            throw refused(PlanFault.EVERYTHING_FORBIDDEN, "", 0, 1, "every recipe is forbidden; allow one");
        }
        for (int i = 0; i < order.factors().size(); i++) {
            requireEveryLevel(order.factors().get(i), i, recipes);
        }
    }

    private static void requireEveryLevel(Factor factor, int place, List<List<Integer>> recipes) {
        for (int level = 0; level < factor.size(); level++) {
            int wanted = level;
            if (recipes.stream().noneMatch(recipe -> recipe.get(place) == wanted)) {
                var subject = factor.key() + ":" + factor.levels().get(level);
                throw refused(PlanFault.LEVEL_NEVER_ALLOWED, subject, 0, 1, "no recipe with it is allowed");
            }
        }
    }

    private static void requireLevels(Factor factor) {
        int levels = factor.size();
        if (levels < 2) {
            throw refused(PlanFault.ONE_LEVEL, factor.key(), levels, 2, "one level compares nothing; hold it fixed");
        }
        if (levels > Order.MOST_LEVELS) {
            throw refused(
                    PlanFault.TOO_MANY_LEVELS, factor.key(), levels, Order.MOST_LEVELS, "take the most different ones");
        }
    }

    private static void requireCells(Order order) {
        int cells = order.teams() * order.cellsPerTeam();
        int needed = order.teams() + order.differences();
        if (cells < needed) {
            throw refused(
                    PlanFault.TOO_FEW_CELLS, "", cells, needed, "leave out a factor or some levels, or build more");
        }
    }

    private static PlanRefused refused(PlanFault fault, String subject, int value, int limit, String wayOut) {
        return new PlanRefused(
                fault,
                subject,
                value,
                limit,
                fault + " " + subject + ": " + value + ", limit " + limit + "; " + wayOut);
    }
}
