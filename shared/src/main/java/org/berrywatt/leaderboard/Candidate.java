package org.berrywatt.leaderboard;

import java.util.UUID;

/**
 * A cell with a result, before the rule has been asked.
 *
 * @param value the result in the unit of the rule's metric, in [0, ∞)
 * @param station where it was measured
 */
public record Candidate(UUID cellId, double value, Trials trials, String station, Verification verification) {}
