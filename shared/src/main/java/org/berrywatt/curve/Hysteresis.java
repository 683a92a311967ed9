package org.berrywatt.curve;

import java.util.List;
import java.util.Optional;

/**
 * How much a sweep there differs from the sweep back. Slow cells have not settled at each load, so that the greatest power depends
 * on the direction.
 *
 * <p>Both ways share loads and meter, whose errors cancel in the index; it carries no uncertainty. What is left of the last
 * digit stays far below {@link #NOTED}.
 *
 * <p>Source: the index as in Habisreutinger, Noel, Snaith, ACS Energy Letters 3 (2018) 2472 (from memory); that 5 % call for a
 * longer dwell is common practice, no source.
 *
 * @param towardsOpenW greatest power with the load rising, from short to open circuit, in (0, ∞)
 * @param towardsShortW greatest power with the load falling, from open to short circuit, in (0, ∞)
 */
public record Hysteresis(double towardsOpenW, double towardsShortW) {
    /** An index beyond this, of either sign, asks for a longer wait at each load. */
    public static final double NOTED = 0.05;

    /**
     * Compares the first run of each direction over what both have, 5 or more, the peak between them: the loads, or the voltages
     * where a bench supply set those. Other loads would cut the peak at another height.
     *
     * @param taken in the order in which they were measured
     * @return empty when the sweep went one way only, or came back by other loads and voltages
     */
    static Optional<Hysteresis> of(List<SweepPoint> taken) {
        var runs = SweepRun.among(taken);
        return first(runs, true).flatMap(open -> first(runs, false).flatMap(close -> overWhatBothHave(open, close)));
    }

    /** A set load lets both voltage and current sag, a set voltage the current alone: whichever was set is shared by more points. */
    private static Optional<Hysteresis> overWhatBothHave(SweepRun open, SweepRun close) {
        var atLoads = open.atLoadsOf(close);
        var atVoltages = open.atVoltagesOf(close);
        return atVoltages.points().size() > atLoads.points().size()
                ? between(atVoltages, close.atVoltagesOf(open))
                : between(atLoads, close.atLoadsOf(open));
    }

    private static Optional<Hysteresis> between(SweepRun towardsOpen, SweepRun towardsShort) {
        return towardsOpen.powerW().flatMap(open -> towardsShort.powerW().map(close -> new Hysteresis(open, close)));
    }

    private static Optional<SweepRun> first(List<SweepRun> runs, boolean towardsOpen) {
        return runs.stream()
                .filter(run -> run.towardsOpen() == towardsOpen)
                .filter(run -> run.powerW().isPresent())
                .findFirst();
    }

    /** (Pshort - Popen)/Pshort, in (-∞, 1); 0 for a cell that settles at once. */
    public double index() {
        return (towardsShortW - towardsOpenW) / towardsShortW;
    }

    /** Whether the two ways differ by more than {@link #NOTED}. */
    public boolean isNoted() {
        return Math.abs(index()) > NOTED;
    }
}
