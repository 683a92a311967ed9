package org.berrywatt.contract;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The control cell of a lab day.
 *
 * @param cellId a cell of the day; null for none
 */
public record ControlCellRequest(@Nullable UUID cellId) {}
