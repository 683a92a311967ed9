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
        var count = terms.rule().count();
        var trials = counting.trials(count, terms.trials());
        return new Contender(tally, TeamFigure.of(counting.value(count), trials), trials);
    }

    static Contender withNothing(Tally tally, Terms terms) {
        var zeros = new double[terms.trials()];
        return new Contender(tally, TeamFigure.of(0, zeros), zeros);
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
