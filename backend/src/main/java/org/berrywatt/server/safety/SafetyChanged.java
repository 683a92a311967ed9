package org.berrywatt.server.safety;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** A team was signed off, a sign-off withdrawn, or an incident written down. */
public record SafetyChanged(UUID labDayId) implements DayChange {}
