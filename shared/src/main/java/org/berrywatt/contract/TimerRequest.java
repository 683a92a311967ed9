package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A timer that starts when the server takes it.
 *
 * @param words what it is for, one line of 1 to 60 characters
 * @param durationS in [1, 28800] seconds
 * @param teamId the team it is for; null with a cell, or when it is for the whole class
 * @param cellId the cell it is for, and by it the cell's team
 */
public record TimerRequest(
        UUID labDayId,
        String words,
        int durationS,
        @Nullable UUID teamId,
        @Nullable UUID cellId) {}
