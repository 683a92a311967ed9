package org.berrywatt.server.findings;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.Figure;
import org.berrywatt.findings.Standing;
import org.berrywatt.findings.Subject;
import org.jspecify.annotations.Nullable;

/**
 * A cell with its levels, from a lab day or from a table.
 *
 * @param cellId null for a row of a table
 * @param mark of the team; null for a row of a table
 * @param figure what is compared, of a cell that counts
 * @param failedStage where it broke
 * @param stage the last one that it passed; empty for none
 * @param levels in the order of the table's columns; null where one was not recorded
 */
record StudyRow(
        @Nullable UUID cellId,
        String label,
        Group team,
        @Nullable Integer mark,
        Group day,
        Standing standing,
        @Nullable Figure figure,
        @Nullable String failedStage,
        String stage,
        Group station,
        List<@Nullable String> levels) {

    /** No cell gives less than nothing, whatever its meter shows. */
    Subject subject() {
        return new Subject(label, team.key(), day.key(), standing, figure == null ? null : Math.max(0, figure.value()));
    }
}
