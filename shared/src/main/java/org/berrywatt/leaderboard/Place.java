package org.berrywatt.leaderboard;

import org.jspecify.annotations.Nullable;

/**
 * A team's place.
 *
 * @param number shared places are equal numbers, in [1, ∞)
 * @param best best place of the 95 % place interval
 * @param worst worst place of the 95 % place interval
 * @param chanceAboveNext share of the trials in which the team is above the next in order, in [0, 1]; null for the last
 */
public record Place(
        int number, int best, int worst, @Nullable Double chanceAboveNext) {}
