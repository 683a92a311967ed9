package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;

/**
 * A browser in which a teacher is signed in.
 *
 * @param browser what it calls itself, as {@code "Firefox, Windows"}; empty when it is none that is known
 * @param since when the teacher signed in there
 * @param here whether it is the one that asks
 */
public record SignedInBrowser(UUID id, String browser, Instant since, boolean here) {}
