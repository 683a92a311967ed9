package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a code opened.
 *
 * @param kind {@code "team"}: this phone now belongs to {@code teamId}; {@code "labDay"}: name a new team next
 */
public record JoinAnswer(
        String kind,
        UUID labDayId,
        String labDayTitle,
        @Nullable UUID teamId,
        @Nullable String teamName) {}
