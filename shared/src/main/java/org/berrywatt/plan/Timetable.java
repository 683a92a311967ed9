package org.berrywatt.plan;

import java.util.List;

/**
 * When which cells are where.
 *
 * @param slots in the order of their starts
 * @param endMin when the last cell is measured, in minutes from the start
 * @param endWithOneMoreHeaterMin the same with one more heater like the largest
 * @param endWithOneMoreStationMin the same with one more station
 */
public record Timetable(List<Slot> slots, int endMin, int endWithOneMoreHeaterMin, int endWithOneMoreStationMin) {

    /**
     * Draws up the timetable; which cells share a bake and lie on which position, and who is measured first of those that are
     * ready together, is drawn by chance.
     *
     * @param jobs one or more
     * @throws PlanRefused {@link PlanFault#NO_TIME}, {@link PlanFault#NO_HEATER}
     */
    public static Timetable of(List<Job> jobs, Workshop workshop, long seed) {
        workshop.require();
        var slots = new Afternoon(workshop, seed).slots(jobs);
        return new Timetable(
                slots,
                end(slots),
                end(new Afternoon(workshop.withOneMoreHeater(), seed).slots(jobs)),
                end(new Afternoon(workshop.withOneMoreStation(), seed).slots(jobs)));
    }

    private static int end(List<Slot> slots) {
        return slots.stream().mapToInt(Slot::toMin).max().orElse(0);
    }
}
