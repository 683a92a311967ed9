package org.berrywatt.leaderboard;

import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Interval;
import org.berrywatt.uncertainty.Sample;

/** What a metric makes of a cell. */
public sealed interface Score {

    /**
     * A figure.
     *
     * @param estimate in the unit of the metric, its value in [0, ∞)
     * @param trials the figure in every trial of the day
     * @param interval the shortest that holds 95 % of the trials
     */
    record Found(Estimate estimate, Trials trials, Interval interval) implements Score {
        private static final double PROBABILITY = 0.95;

        /** A figure with its own estimate of its uncertainty. */
        public static Found of(Estimate estimate, Trials trials) {
            return new Found(estimate, trials, trials.sample().shortestInterval(PROBABILITY));
        }

        private static Found of(double value, Trials trials) {
            Sample sample = trials.sample();
            return new Found(
                    new Estimate(value, sample.standardDeviation()), trials, sample.shortestInterval(PROBABILITY));
        }

        public double value() {
            return estimate.value();
        }

        /**
         * This figure over another in every trial, so that what moves both alike cancels.
         *
         * @param otherwise what is missing when the other cannot be told from 0: when it is 0 in some trial
         */
        Score over(Found other, Obstacle otherwise) {
            return other.trials.reachZero() || !(other.value() > 0)
                    ? new Missing(otherwise)
                    : of(value() / other.value(), trials.over(other.trials));
        }
    }

    /** No figure yet, and why. */
    record Missing(Obstacle obstacle) implements Score {}
}
