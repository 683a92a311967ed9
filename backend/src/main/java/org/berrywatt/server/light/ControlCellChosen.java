package org.berrywatt.server.light;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** A lab day has another control cell, or none any more. */
public record ControlCellChosen(UUID labDayId) implements DayChange {}
