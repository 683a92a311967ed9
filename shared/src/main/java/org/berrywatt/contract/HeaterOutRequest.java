package org.berrywatt.contract;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A cell is taken off its heater.
 *
 * @param slotId the stay that ends, also when its entry was corrected meanwhile
 * @param outAt when, by the server's clock as the phone knows it; null for now. Held between the time in and now.
 */
public record HeaterOutRequest(UUID slotId, @Nullable Instant outAt) {}
