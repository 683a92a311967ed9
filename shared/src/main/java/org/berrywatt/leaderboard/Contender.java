package org.berrywatt.leaderboard;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A team that has a figure. */
final class Contender {
    private final Tally tally;
    private final TeamFigure figure;
    private final double[] trials;

    private Contender(Tally tally, TeamFigure figure, double[] trials) {
        this.tally = tally;
        this.figure = figure;
        this.trials = trials;
    }

    static Contender of(Tally tally, Terms terms) {
        var counting = new Counting(tally.counting(), tally.zeros());
        var rule = terms.rule();
        var trials = rule.metric() instanceof Yield
                ? Yield.trials(tally.teamId(), counting.working(), counting.declared(), terms.trials())
                : counting.trials(rule.count(), terms.trials());
        return new Contender(tally, TeamFigure.of(counting.value(rule.count()), trials), trials);
    }

    UUID teamId() {
        return tally.teamId();
    }

    TeamFigure figure() {
        return figure;
    }

    /** The figure in every trial. */
    double[] trials() {
        return trials;
    }

    Standing standing(int place, PlaceInterval interval, @Nullable Double chanceAboveNext) {
        return tally.ranked(new Place(place, interval.best(), interval.worst(), chanceAboveNext), figure);
    }
}
