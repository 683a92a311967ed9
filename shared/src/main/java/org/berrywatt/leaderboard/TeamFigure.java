package org.berrywatt.leaderboard;

import org.berrywatt.uncertainty.Interval;
import org.berrywatt.uncertainty.Sample;

/**
 * What a team is ranked by.
 *
 * @param value the figure that the cells' results make
 * @param standardUncertainty standard deviation of the figure over the trials
 * @param interval the shortest that holds 95 % of the trials
 */
public record TeamFigure(double value, double standardUncertainty, Interval interval) {
    private static final double PROBABILITY = 0.95;

    static TeamFigure of(double value, double[] trials) {
        var sample = Sample.of(trials);
        return new TeamFigure(value, sample.standardDeviation(), sample.shortestInterval(PROBABILITY));
    }
}
