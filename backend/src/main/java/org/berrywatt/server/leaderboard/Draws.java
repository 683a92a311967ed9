package org.berrywatt.server.leaderboard;

import java.util.UUID;
import org.berrywatt.uncertainty.Deviates;

/** The draws of a day, the same for all its cells: whoever has its records and these numbers gets the same results. */
public final class Draws {

    /** Trials of every result: a chance of 2.5 % is then known to 0.16 % (standard deviation of a share). */
    public static final int TRIALS = 10_000;

    private Draws() {}

    /** What the draws of a day begin with. */
    public static long seed(UUID labDayId) {
        return labDayId.getMostSignificantBits() ^ labDayId.getLeastSignificantBits();
    }

    static Deviates of(UUID labDayId) {
        return new Deviates(seed(labDayId), TRIALS);
    }
}
