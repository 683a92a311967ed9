package org.berrywatt.server.leaderboard;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.leaderboard.Trials;
import org.berrywatt.normalise.Result;
import org.berrywatt.normalise.SharedUncertainty;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Input;
import org.berrywatt.uncertainty.Interval;
import org.berrywatt.uncertainty.MonteCarlo;
import org.berrywatt.uncertainty.Sample;

/**
 * A cell's power density in every trial of its day.
 *
 * @param interval the shortest that holds 95 % of the trials
 */
record Drawn(Trials trials, Interval interval) {

    /** Trials of every result: a chance of 2.5 % is then known to 0.16 % (standard deviation of a share). */
    static final int TRIALS = 10_000;

    private static final double PROBABILITY = 0.95;

    static Drawn of(Result result, Deviates deviates, UUID cellId) {
        double power = result.powerDensityWm2().value();
        double[] trials = MonteCarlo.trials(
                logarithms(result), z -> power * Math.exp(Arrays.stream(z).sum()), deviates, cellId.toString());
        return new Drawn(Trials.of(trials), Sample.of(trials).shortestInterval(PROBABILITY));
    }

    /** What moves the logarithm of the power: each shared cause, and the rest, which is the cell's own. */
    private static List<Input> logarithms(Result result) {
        double power = result.powerDensityWm2().value();
        double all = result.powerDensityWm2().estimate().relativeUncertainty();
        double common = result.shared().stream()
                .mapToDouble(part -> Math.pow(part.powerDensityWm2() / power, 2))
                .sum();
        var own = Input.normal("own", 0, "1", Math.sqrt(Math.max(0, all * all - common)));
        return Stream.concat(Stream.of(own), result.shared().stream().map(part -> shared(part, power)))
                .toList();
    }

    private static Input shared(SharedUncertainty part, double power) {
        double relative = Math.abs(part.powerDensityWm2()) / power;
        return Input.normal(part.source(), 0, "1", relative).sharedBy(part.source());
    }

    /** The draws of a day, the same for all its cells. */
    static Deviates deviates(UUID labDayId) {
        return new Deviates(labDayId.getMostSignificantBits() ^ labDayId.getLeastSignificantBits(), TRIALS);
    }
}
