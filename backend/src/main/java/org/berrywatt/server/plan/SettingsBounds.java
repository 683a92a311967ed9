package org.berrywatt.server.plan;

import org.berrywatt.contract.PlanRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;

/** Refuses settings that no class has. */
final class SettingsBounds {

    private static final int MOST_TEAMS = 24;
    private static final int MOST_CELLS = 12;
    private static final int MOST_STATIONS = 12;
    private static final int MOST_HEATERS = 12;
    private static final int MOST_POSITIONS = 24;
    private static final int LONGEST_DAY_MIN = 1440;
    private static final int MOST_WASTE_PERCENT = 200;
    private static final int MOST_RULES = 60;
    private static final int LONGEST_NAME = 24;

    private SettingsBounds() {}

    static void require(PlanRequest request) {
        Given.between("teams", request.teams(), 1, MOST_TEAMS);
        Given.between("cellsPerTeam", request.cellsPerTeam(), 1, MOST_CELLS);
        Given.between("stations", request.stations(), 1, MOST_STATIONS);
        Given.between("minutes", request.minutes(), 0, LONGEST_DAY_MIN);
        Given.between("wastePercent", request.wastePercent(), 0, MOST_WASTE_PERCENT);
        Given.between("forbidden", Given.need("forbidden", request.forbidden()).size(), 0, MOST_RULES);
        requireRange("ratio", request.ratio(), 100);
        if (request.spread() != null) {
            requireRange("spread", request.spread(), 10);
        }
        var heaters = Given.need("heaters", request.heaters());
        Given.between("heaters", heaters.size(), 0, MOST_HEATERS);
        heaters.forEach(heater -> {
            Words.line("heaters", heater.name(), LONGEST_NAME);
            Given.between("heaters", heater.positions(), 1, MOST_POSITIONS);
        });
    }

    private static void requireRange(String path, double value, double most) {
        if (!(value > 1 && value <= most)) {
            throw Refusal.of(ProblemCode.QUANTITY_IMPOSSIBLE)
                    .field(path)
                    .value(value)
                    .limit("(1, " + Math.round(most) + "]");
        }
    }
}
