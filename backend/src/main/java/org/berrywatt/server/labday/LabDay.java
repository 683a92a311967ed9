package org.berrywatt.server.labday;

import java.time.LocalDate;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * A lab day as later features see it.
 *
 * @param referenceIrradianceWm2 irradiance that results are brought to, in (0, infinity)
 * @param referenceAreaM2 area that powers are brought to, in (0, infinity)
 * @param rule key of the scoring rule
 * @param cellsPerTeam number of cells that each team declares, in [1, 12]
 * @param entryOpen whether cells and readings may be written
 * @param resultsFinal whether nothing that results depend on may change; never while entry is open
 * @param keepUntil when its teacher wants to be reminded to delete it; null while nobody has decided
 */
public record LabDay(
        UUID id,
        String title,
        LocalDate date,
        double referenceIrradianceWm2,
        double referenceAreaM2,
        String rule,
        int cellsPerTeam,
        boolean teamsCreateThemselves,
        boolean entryOpen,
        boolean resultsFinal,
        @Nullable LocalDate keepUntil,
        long version) {

    /** @throws Refusal {@code labday.final} */
    LabDay requireChangeable() {
        if (resultsFinal) {
            throw Refusal.of(ProblemCode.LABDAY_FINAL).value(title);
        }
        return this;
    }

    /** @throws Refusal {@code labday.final} or {@code labday.closed} */
    LabDay requireOpen() {
        if (!requireChangeable().entryOpen) {
            throw Refusal.of(ProblemCode.LABDAY_CLOSED).value(title);
        }
        return this;
    }
}
