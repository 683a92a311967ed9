package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One time that a reading was set aside or taken back.
 *
 * @param reason null when it was taken back
 * @param teacher who did it
 */
public record SetAsideAnswer(
        UUID id, UUID readingId, @Nullable String reason, String teacher, Instant at) {}
