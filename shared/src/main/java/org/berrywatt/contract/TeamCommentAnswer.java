package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;

/** A teacher's comment as it stands; its words are empty where it was taken back. */
public record TeamCommentAnswer(UUID teamId, String words, String teacher, Instant at) {}
