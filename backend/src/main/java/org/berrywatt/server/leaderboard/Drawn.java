package org.berrywatt.server.leaderboard;

import java.util.UUID;
import org.berrywatt.leaderboard.Trials;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.normalise.Result;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Interval;
import org.berrywatt.uncertainty.Sample;

/**
 * A cell's power density in every trial of its day.
 *
 * @param interval the shortest that holds 95 % of the trials
 */
record Drawn(Trials trials, Interval interval) {

    /** Trials of every result: a chance of 2.5 % is then known to 0.16 % (standard deviation of a share). */
    static final int TRIALS = 10_000;

    private static final double PROBABILITY = 0.95;

    static Drawn of(Result result, Deviates deviates, UUID cellId) {
        double[] trials = result.trials(Measurand.POWER_DENSITY, deviates, cellId.toString());
        return new Drawn(Trials.of(trials), Sample.of(trials).shortestInterval(PROBABILITY));
    }

    /** The draws of a day, the same for all its cells. */
    static Deviates deviates(UUID labDayId) {
        return new Deviates(labDayId.getMostSignificantBits() ^ labDayId.getLeastSignificantBits(), TRIALS);
    }
}
