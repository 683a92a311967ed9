package org.berrywatt.server.leaderboard;

import java.util.List;
import org.berrywatt.contract.Remark;
import org.berrywatt.leaderboard.Verification;
import org.berrywatt.normalise.Result;
import org.berrywatt.server.cell.Cell;

/** What the recorded readings make of a cell. */
sealed interface Judged {

    Cell cell();

    /**
     * It has a result.
     *
     * @param drawn its power density in every trial
     * @param station where it was measured
     * @param verification whether somebody else read it again and found it alike
     * @param notes what a reader of the result should know
     */
    record Counts(Cell cell, Result result, Drawn drawn, String station, Verification verification, List<Remark> notes)
            implements Judged {

        Counts with(Verification found) {
            return new Counts(cell, result, drawn, station, found, notes);
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
