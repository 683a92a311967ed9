package org.berrywatt.contract;

import java.time.Instant;
import java.util.List;

/**
 * How the lesson stands for whoever asks.
 *
 * @param timers those that run or were over not long ago, in the order of their ends: all for a teacher, for a team the
 *     class's and its own
 * @param slots every stay on a heater that no correction replaces, in the order put in
 * @param coolDownMinutes how long a cell cools off the heater before it may be touched after a check
 */
public record LessonAnswer(
        Instant serverTime, List<TimerAnswer> timers, List<HeaterSlotAnswer> slots, int coolDownMinutes) {}
