package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A new team. A teacher names the lab day, a phone shows the day's code.
 *
 * @param name team name or initials, 1 to 24 characters; no personal data
 */
public record TeamRequest(@Nullable UUID labDayId, @Nullable String code, String name) {}
