package org.berrywatt.server.cell;

import java.util.UUID;
import org.berrywatt.cell.Stage;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.safety.HazardousWork;
import org.berrywatt.server.safety.Safety;
import org.berrywatt.server.typed.Origin;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Asks for a sign-off before a dangerous stage counts as done. A failure is always taken: it must never be hidden. */
@Component
class StageGate {

    private final CellRecords records;
    private final Safety safety;

    StageGate(CellRecords records, Safety safety) {
        this.records = records;
        this.safety = safety;
    }

    /**
     * Lets a failure pass, a correction that leaves a passed stage passed, and what was done under a sign-off.
     *
     * @throws Refusal {@code zone.notSignedOff}, or {@code zone.reasonNeeded} for a teacher
     */
    void admit(CellEntity cell, StageEnd end, @Nullable UUID replaced, Origin origin, Caller caller) {
        var record = records.find(cell.id()).orElseThrow();
        if (end.failure() == null && !hadPassed(record, end, replaced)) {
            var stage = Stage.of(end.stage()).orElseThrow();
            safety.requireSignedOff(
                    HazardousWork.stage(cell.teamId(), stage, record.view().levels(), origin, end.note()), caller);
        }
    }

    private static boolean hadPassed(CellRecord record, StageEnd end, @Nullable UUID replaced) {
        return record.outcomes().stream()
                .filter(outcome -> outcome.id().equals(replaced))
                .map(StageOutcomeEntity::view)
                .anyMatch(outcome -> outcome.passed() && outcome.stage().equals(end.stage()));
    }
}
