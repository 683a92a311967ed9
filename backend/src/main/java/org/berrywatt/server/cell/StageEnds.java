package org.berrywatt.server.cell;

import java.util.Arrays;
import java.util.List;
import org.berrywatt.cell.FailureKind;
import org.berrywatt.cell.Stage;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Words;
import org.jspecify.annotations.Nullable;

/** Reads how a stage ended. */
final class StageEnds {

    private static final int LONGEST_NOTE = 200;
    private static final List<String> STAGES =
            Arrays.stream(Stage.values()).map(Stage::key).toList();

    private StageEnds() {}

    /**
     * How a stage ended.
     *
     * @throws org.berrywatt.server.platform.Refusal for an unknown stage, a failure without its kind, a kind that this
     *     stage does not know or that goes with a stage passed, or a note that is refused
     */
    static StageEnd of(OutcomeRequest request) {
        var stage = Stage.of(Given.choice("stage", request.stage(), STAGES)).orElseThrow();
        return new StageEnd(stage.key(), failure(stage, request), note(request.note()));
    }

    private static @Nullable String failure(Stage stage, OutcomeRequest request) {
        if (request.passed() && request.failure() == null) {
            return null;
        }
        return Given.choice("failure", request.failure(), request.passed() ? List.of() : kinds(stage));
    }

    private static List<String> kinds(Stage stage) {
        return stage.failures().stream().map(FailureKind::key).toList();
    }

    private static @Nullable String note(@Nullable String typed) {
        return typed == null || typed.isBlank() ? null : Words.line("note", typed, LONGEST_NOTE);
    }
}
