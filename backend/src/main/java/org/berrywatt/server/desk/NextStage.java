package org.berrywatt.server.desk;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.berrywatt.cell.Stage;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.StageOutcome;

/** The stage that a cell is at: the first one that has no outcome. */
final class NextStage {

    private NextStage() {}

    static Optional<String> of(Cell cell) {
        Set<String> done = cell.outcomes().stream().map(StageOutcome::stage).collect(Collectors.toSet());
        return Arrays.stream(Stage.values())
                .map(Stage::key)
                .filter(stage -> !done.contains(stage))
                .findFirst();
    }
}
