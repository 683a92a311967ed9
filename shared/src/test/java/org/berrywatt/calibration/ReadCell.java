package org.berrywatt.calibration;

import java.util.UUID;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.Trials;
import org.berrywatt.leaderboard.Verification;
import org.berrywatt.uncertainty.Interval;
import org.berrywatt.uncertainty.Sample;

/** What a day says of a cell, and what is true. */
final class ReadCell {
    private static final double PROBABILITY = 0.95;

    private final UUID id;
    private final String station;
    private final boolean swept;
    private final double truthWm2;
    private final double value;
    private final double[] trials;

    /**
     * A cell that was read.
     *
     * @param swept whether it was read by a load sweep
     * @param truthWm2 power density at the reference light
     * @param value what the result says it is
     * @param trials of the result
     */
    ReadCell(UUID id, String station, boolean swept, double truthWm2, double value, double[] trials) {
        this.id = id;
        this.station = station;
        this.swept = swept;
        this.truthWm2 = truthWm2;
        this.value = value;
        this.trials = trials;
    }

    UUID id() {
        return id;
    }

    String station() {
        return station;
    }

    boolean swept() {
        return swept;
    }

    double truthWm2() {
        return truthWm2;
    }

    Interval interval() {
        return Sample.of(trials).shortestInterval(PROBABILITY);
    }

    boolean isCovered() {
        return interval().contains(truthWm2);
    }

    /** The interval of the difference to another cell of the same day, trial by trial. */
    Interval difference(ReadCell other) {
        double[] differences = new double[trials.length];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = trials[i] - other.trials[i];
        }
        return Sample.of(differences).shortestInterval(PROBABILITY);
    }

    CellEntry entry() {
        return new CellEntry.Counts(id, value, Trials.of(trials), Verification.NOT_READ_AGAIN);
    }
}
