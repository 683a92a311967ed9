package org.berrywatt.server.lesson;

import java.util.UUID;
import org.berrywatt.server.labday.DayChange;

/** An announcement, a timer or a heater changed, or a phone has other refusals than before. */
public record LessonChanged(UUID labDayId) implements DayChange {}
