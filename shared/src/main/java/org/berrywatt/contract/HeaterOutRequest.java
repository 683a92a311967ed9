package org.berrywatt.contract;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A cell is taken off its heater.
 *
 * @param outAt when, by the server's clock as the phone knows it; null for now. Held between the time in and now.
 */
public record HeaterOutRequest(@Nullable Instant outAt) {}
