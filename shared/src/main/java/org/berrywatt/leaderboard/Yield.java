package org.berrywatt.leaderboard;

import java.util.List;
import java.util.UUID;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.ShareDraws;

/**
 * Cells that work over declared cells, k/n, as a part of 1, in [0, 1]. A cell works when it has a result; it then is 1, a failed
 * one 0. Every cell with a result is eligible; there is nothing to remedy but to finish and measure.
 *
 * <p>A share of few cells is a poor measure of how a team builds: its interval and its trials are those of the share behind k of n
 * by Jeffreys' prior, Beta(k + 1/2, n - k + 1/2) (Brown, Cai and DasGupta, Statistical Science 16 (2001) 101-133). Teams are
 * drawn independently, so that 2 of 3 and 1 of 3 share a place.
 */
public record Yield() implements Metric {

    /** One for all: what differs is the team, which names its draws. */
    private static final long SEED = 1;

    @Override
    public String key() {
        return "yield";
    }

    @Override
    public String unit() {
        return "part";
    }

    /** The share is the mean of ones and zeros; a median could only say whether it is more than half. */
    @Override
    public List<Count> counts() {
        return List.of(Count.MEAN);
    }

    @Override
    public Score score(MeasuredCell cell, Deviates deviates) {
        return working(deviates.trials());
    }

    /** What a cell that works has. */
    public static Score.Found working(int trials) {
        return Score.Found.of(Estimate.exact(1), Trials.certain(1, trials));
    }

    /**
     * The share behind a team's cells in every trial.
     *
     * @param working cells that work, in [0, declared]
     * @param declared in [1, ∞)
     */
    static double[] trials(UUID teamId, int working, int declared, int trials) {
        return ShareDraws.of(working, declared, new Deviates(SEED, trials), teamId + "/yield");
    }
}
