package org.berrywatt.server.leaderboard;

import java.util.List;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.EvaluatedReading;
import org.berrywatt.normalise.Result;
import org.berrywatt.server.cell.Cell;

/** What the recorded readings make of a cell. */
sealed interface Judged {

    Cell cell();

    /**
     * It has a result.
     *
     * @param reading the one that counts, with its result
     * @param station where it was measured
     * @param notes what a reader of the result should know
     */
    record Counts(Cell cell, EvaluatedReading reading, String station, List<Remark> notes) implements Judged {

        Result result() {
            return reading.result();
        }
    }

    /**
     * It has none yet.
     *
     * @param missing what is still needed before it counts, most urgent first, at least one
     */
    record Waiting(Cell cell, List<Remark> missing) implements Judged {}

    /** It broke at a stage. */
    record Failed(Cell cell, Remark how) implements Judged {}
}
