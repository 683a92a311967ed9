package org.berrywatt.server.reading;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** A reading was accepted, first or as a correction. */
public record ReadingAccepted(UUID labDayId, UUID cellId, UUID readingId) implements DayChange {}
