package org.berrywatt.server.labday;

import java.util.UUID;

/** A lab day was created or edited, or opened or closed for entries. */
public record LabDayChanged(UUID labDayId) implements DayChange {}
