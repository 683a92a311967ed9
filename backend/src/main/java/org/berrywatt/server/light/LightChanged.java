package org.berrywatt.server.light;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** A station was set up or its light read. */
public record LightChanged(UUID labDayId, UUID stationId) implements DayChange {}
