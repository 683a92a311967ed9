package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a teacher tells the whole class.
 *
 * @param words one line of 1 to 200 characters; no personal data, since everybody with the Wall's address may read it
 * @param minutes until it goes away by itself, in [1, 480]; null when it stays until it is taken back or followed by
 *     another one
 */
public record AnnouncementRequest(
        UUID labDayId, String words, @Nullable Integer minutes) {}
