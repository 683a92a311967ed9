package org.berrywatt.server.cell;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** A cell was registered, its build sheet corrected, or the outcome of a stage recorded. */
public record CellChanged(UUID labDayId, UUID cellId) implements DayChange {}
