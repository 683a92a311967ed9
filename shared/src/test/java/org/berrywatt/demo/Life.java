package org.berrywatt.demo;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** A cell's way through the build: which stages it reached, when each ended, and how. */
record Life(PlannedCell cell, Fate fate, List<StageEnd> stages) {

    /** How a stage ended. */
    record StageEnd(String stage, boolean passed, String failure, LocalDateTime at) {}

    static Life of(PlannedCell cell) {
        Fate fate = Fate.of(cell);
        List<StageEnd> stages = new ArrayList<>();
        for (StageEnd next : unhindered(cell)) {
            boolean ends = fate.endsAt(next.stage());
            stages.add(new StageEnd(next.stage(), !ends, ends ? String.valueOf(fate.failure()) : "", next.at()));
            if (ends) {
                break;
            }
        }
        return new Life(cell, fate, List.copyOf(stages));
    }

    private static List<StageEnd> unhindered(PlannedCell cell) {
        LocalDateTime film = cell.after(cell.registered(), 16, "film");
        LocalDateTime bake = cell.after(Scenario.at(13, 5), 5, "bake");
        LocalDateTime dye = cell.after(bake, cell.soakMin() + 6, "soak");
        LocalDateTime counterElectrode = cell.after(dye, 4 + turn(cell), "counter");
        LocalDateTime fill = cell.after(counterElectrode, 7, "fill");
        return List.of(
                passed("film", film),
                passed("bake", bake),
                passed("dye", dye),
                passed("counterElectrode", counterElectrode),
                passed("fill", fill));
    }

    /** One candle and one bottle of electrolyte go from table to table. */
    private static int turn(PlannedCell cell) {
        return 4 * Team.ALL.indexOf(cell.team()) + 3 * cell.place();
    }

    private static StageEnd passed(String stage, LocalDateTime at) {
        return new StageEnd(stage, true, "", at);
    }

    LocalDateTime filled() {
        return stages.get(stages.size() - 1).at();
    }

    /** Whether there is a closed cell to put under a lamp. */
    boolean reachesTheMeter() {
        return fate.stage() == null || fate.endsAt("measure");
    }
}
