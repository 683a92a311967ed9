package org.berrywatt.server.lesson;

import java.util.UUID;

/** An announcement, a timer or a heater changed, or a phone has other refusals than before. */
public record LessonChanged(UUID labDayId) {}
