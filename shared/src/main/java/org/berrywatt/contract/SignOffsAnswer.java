package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;

/**
 * The sign-offs of a day, oldest first.
 *
 * @param serverTime the server's clock, by which they expire
 */
public record SignOffsAnswer(Instant serverTime, List<SignOffAnswer> signOffs) {}
