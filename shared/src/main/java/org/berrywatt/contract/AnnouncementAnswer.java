package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a teacher told the whole class.
 *
 * @param until when it goes away by itself, by the server's clock; null when it stays
 */
public record AnnouncementAnswer(
        UUID id, String words, Instant madeAt, @Nullable Instant until) {}
