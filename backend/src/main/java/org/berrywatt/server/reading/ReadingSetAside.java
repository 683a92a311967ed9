package org.berrywatt.server.reading;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** A reading was set aside or taken back. */
public record ReadingSetAside(UUID labDayId, UUID cellId, UUID readingId) implements DayChange {}
