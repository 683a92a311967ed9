package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;

/**
 * What waits for the teacher, the most urgent first and of equal urgency the oldest first.
 *
 * @param serverTime the clock by which ages are told
 */
public record DeskAnswer(Instant serverTime, List<AttentionItem> items) {}
