package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Something that was done to a finished cell; kinds as in {@link CellEventRequest}. */
public record CellEventAnswer(
        UUID id, UUID cellId, String kind, @Nullable String note, Instant acceptedAt) {}
