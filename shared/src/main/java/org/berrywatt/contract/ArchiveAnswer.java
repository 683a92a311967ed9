package org.berrywatt.contract;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A lab day that came in, or could come in, as a file.
 *
 * @param madeAt when the file was written
 * @param changesSince how many changes of its tables this server knows that the file's server did not; 0 for the same version
 * @param sameResults whether the leaderboard is the one that the file's server had, to the last digit
 * @param kept whether the day is on this server now; false after a check
 */
public record ArchiveAnswer(
        UUID labDayId,
        String title,
        LocalDate heldOn,
        Instant madeAt,
        long teams,
        long cells,
        long readings,
        int changesSince,
        boolean sameResults,
        boolean kept) {}
