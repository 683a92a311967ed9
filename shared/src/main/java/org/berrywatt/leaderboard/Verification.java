package org.berrywatt.leaderboard;

import java.util.Collection;

/** Whether somebody else has read a cell again and found the same, within {@value #WITHIN} of the result. */
public enum Verification {
    VERIFIED,
    NOT_READ_AGAIN,
    READ_DIFFERENTLY;

    /** Share of the result by which a reading of somebody else may differ (rule of the day, no source). */
    public static final double WITHIN = 0.15;

    /**
     * Compares a result with those that others got from the same cell, by the same calculation.
     *
     * @param result in (0, ∞)
     * @param byOthers one for each other person, in any order; NaN where their reading has no result
     */
    public static Verification of(double result, Collection<Double> byOthers) {
        if (byOthers.isEmpty()) {
            return NOT_READ_AGAIN;
        }
        return byOthers.stream().anyMatch(other -> Math.abs(other - result) <= WITHIN * result)
                ? VERIFIED
                : READ_DIFFERENTLY;
    }

    Obstacle obstacle() {
        return this == READ_DIFFERENTLY ? Obstacle.READ_DIFFERENTLY : Obstacle.NOT_READ_AGAIN;
    }
}
