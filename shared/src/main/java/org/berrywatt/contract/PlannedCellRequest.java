package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Says which planned cell a registered cell is.
 *
 * @param label of the planned cell; null when it is none of them after all
 */
public record PlannedCellRequest(UUID cellId, @Nullable String label) {}
