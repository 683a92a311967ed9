package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a teacher writes to a team under its report.
 *
 * @param words at most 800 characters; empty takes the comment back
 */
public record TeamCommentRequest(UUID teamId, @Nullable String words) {}
