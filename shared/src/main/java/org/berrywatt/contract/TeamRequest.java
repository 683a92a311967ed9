package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A new team. A teacher names the lab day, a phone shows the day's code.
 *
 * @param name team name or initials, 1 to 24 characters; no personal data
 * @param claim at least 16 random characters made on this phone and kept until it is answered: only with them does a
 *     repeated request make the phone one of the team's again
 */
public record TeamRequest(
        @Nullable UUID labDayId,
        @Nullable String code,
        String name,
        @Nullable String claim) {

    /** A request without a claim. */
    public TeamRequest(@Nullable UUID labDayId, @Nullable String code, String name) {
        this(labDayId, code, name, null);
    }
}
