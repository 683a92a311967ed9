package org.berrywatt.server.team;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** A team was created, renamed, given another code, or had another one joined to it. */
public record TeamChanged(UUID labDayId, UUID teamId) implements DayChange {}
