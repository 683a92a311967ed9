package org.berrywatt.contract;

import org.jspecify.annotations.Nullable;

/**
 * Deletes a lab day for good.
 *
 * @param title the day's title, typed once more
 */
public record RemovalRequest(@Nullable String title) {}
