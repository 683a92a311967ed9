package org.berrywatt.leaderboard;

import java.time.Duration;
import java.util.List;
import org.berrywatt.normalise.Measurand;
import org.berrywatt.uncertainty.Deviates;

/**
 * What is left of a cell's current: current per area at reference light, by the reading that counts, over that by the reading at
 * which the cell had settled; a part of 1, in [0, ∞). Above 1 it improved.
 *
 * <p>Current and not power, since every reading knows the current and only a load sweep knows the power. In every trial the two
 * readings share what is the cell's, its area, and the calibration of meters and lamp; clips, digits and the light's reading
 * are drawn for each.
 *
 * <p>Eligible is a cell that had settled and was read again {@value #LEAST_AGE_MINUTES} minutes later or more. Otherwise it is
 * outstanding, and the remedy is to read it at least three times over ten minutes or more until it has settled, or to read it
 * again an hour later, or next lesson. A failed cell kept nothing: 0. Cells are compared whatever their age; the time to 80 % is
 * told for each cell as far as it was seen, never guessed.
 */
public record CurrentRetention() implements Metric {

    /** A fresh cell settles over tens of minutes; what an hour shows is no longer that (common practice, no source). */
    public static final int LEAST_AGE_MINUTES = 60;

    private static final Duration LEAST_AGE = Duration.ofMinutes(LEAST_AGE_MINUTES);

    @Override
    public String key() {
        return "retention";
    }

    @Override
    public String unit() {
        return "part";
    }

    /** Not the best verified cell: a cell goes on ageing, so that nobody can repeat a later reading. */
    @Override
    public List<Count> counts() {
        return List.of(Count.MEDIAN, Count.MEAN);
    }

    @Override
    public Score score(MeasuredCell cell, Deviates deviates) {
        var settled = cell.settled();
        if (settled == null) {
            return new Score.Missing(Obstacle.NOT_SETTLED);
        }
        return settled.age().compareTo(LEAST_AGE) < 0
                ? new Score.Missing(Obstacle.NO_LATER_READING)
                : cell.now()
                        .figure(Measurand.CURRENT_DENSITY, deviates)
                        .over(
                                settled.reading().earlierFigure(Measurand.CURRENT_DENSITY, deviates),
                                Obstacle.SETTLED_TOO_FAINT);
    }
}
