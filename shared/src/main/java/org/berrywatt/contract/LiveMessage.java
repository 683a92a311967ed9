package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * A live message, and the shape of a snapshot.
 *
 * @param epoch changes when the numbers begin anew
 * @param seq grows by one with every state of a topic
 * @param kind {@code "leaderboard"} with a {@link LeaderboardState}, {@code "room"} with a {@link RoomState}, or {@code
 *     "beat"} without a body: seq so far
 */
public record LiveMessage(
        String epoch, long seq, String kind, @Nullable Object body) {}
