package org.berrywatt.server.leaderboard;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.berrywatt.leaderboard.MeasuredCell;
import org.berrywatt.leaderboard.Score;

/**
 * What is left of a cell's current.
 *
 * @param share of the settled current
 * @param age since it had settled
 */
record Kept(UUID cellId, double share, Duration age) {

    /** Empty where there is no score of retention. */
    static Optional<Kept> of(Score retention, MeasuredCell cell) {
        return retention instanceof Score.Found found && cell.settled() != null
                ? Optional.of(new Kept(
                        cell.now().cellId(), found.value(), cell.settled().age()))
                : Optional.empty();
    }
}
