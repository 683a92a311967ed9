package org.berrywatt.contract;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Until when a lab day is to be kept.
 *
 * @param keepUntil last day on which it is wanted; null while nobody has decided
 */
public record RetentionRequest(@Nullable LocalDate keepUntil) {}
