package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * Makes the results of a lab day final or takes that back.
 *
 * @param reason why final results may change again, 1 to 120 characters; needed to take it back
 */
public record FinalRequest(boolean resultsFinal, @Nullable String reason) {}
