package org.berrywatt.leaderboard;

import java.util.UUID;

/**
 * A cell with a result, before the rule has been asked.
 *
 * @param score what the rule's metric makes of it
 */
public record Candidate(UUID cellId, Score score, Verification verification) {}
