package org.berrywatt.server.leaderboard;

import java.util.UUID;
import org.berrywatt.uncertainty.Deviates;

/** The draws of a day, the same for all its cells. */
final class Draws {

    /** Trials of every result: a chance of 2.5 % is then known to 0.16 % (standard deviation of a share). */
    static final int TRIALS = 10_000;

    private Draws() {}

    static Deviates of(UUID labDayId) {
        return new Deviates(labDayId.getMostSignificantBits() ^ labDayId.getLeastSignificantBits(), TRIALS);
    }
}
