package org.berrywatt.server.calculator;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.calculation.LeaderboardRequest;
import org.berrywatt.leaderboard.Candidate;
import org.berrywatt.leaderboard.CellEntry;
import org.berrywatt.leaderboard.EfficiencyAsMeasured;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Score;
import org.berrywatt.leaderboard.Trials;
import org.berrywatt.leaderboard.Verification;
import org.berrywatt.leaderboard.Yield;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.typed.Given;
import org.berrywatt.uncertainty.Deviates;
import org.berrywatt.uncertainty.Estimate;
import org.berrywatt.uncertainty.Input;
import org.berrywatt.uncertainty.MonteCarlo;
import org.jspecify.annotations.Nullable;

/**
 * A declared cell of a calculated leaderboard.
 *
 * @param inputs its result with its own uncertainty, then what moves it together with others; empty unless it counts
 */
record BoardCell(String team, String cell, String state, List<Input> inputs, String station, List<Double> readAgain) {

    private static final String COUNTS = "counts";
    private static final String FAILED = "failed";
    private static final List<String> STATES = List.of(COUNTS, FAILED, "waiting");
    private static final int MOST_CAUSES = 8;
    private static final int MOST_READ_AGAIN = 12;

    static BoardCell of(String path, LeaderboardRequest.Cell given, Metric metric) {
        var state = Given.choice(path + ".state", Objects.requireNonNullElse(given.state(), COUNTS), STATES);
        return new BoardCell(
                Named.line(path + ".team", given.team()),
                Named.line(path + ".cell", given.cell()),
                state,
                state.equals(COUNTS) ? inputs(path, given, metric) : List.of(),
                station(
                        path + ".station",
                        given.station(),
                        state.equals(COUNTS) && metric instanceof EfficiencyAsMeasured),
                given.readAgain() == null
                        ? List.of()
                        : Entries.read(
                                path + ".readAgain", given.readAgain(), 0, MOST_READ_AGAIN, Ranges.RESULT::need));
    }

    boolean counts() {
        return state.equals(COUNTS);
    }

    /** Its name among all cells; a line holds no line break. */
    String name() {
        return team + "\n" + cell;
    }

    UUID id() {
        return id(name());
    }

    static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** As the ranking takes it, by what the metric made of its value. */
    CellEntry entry(Rule rule, Score score) {
        var verification = Verification.of(inputs.get(0).value(), readAgain);
        return rule.entry(new Candidate(id(), score, verification));
    }

    /** As the ranking takes it without a value. */
    CellEntry withoutValue() {
        return state.equals(FAILED) ? new CellEntry.Failed(id()) : new CellEntry.Waiting(id());
    }

    Score.Found found(Deviates deviates) {
        return Score.Found.of(Estimate.exact(inputs.get(0).value()), trials(deviates));
    }

    /** The result in every trial; like the figure of a cell it never falls below 0. */
    private Trials trials(Deviates deviates) {
        return Trials.of(MonteCarlo.trials(
                inputs, values -> Math.max(0, Arrays.stream(values).sum()), deviates, name()));
    }

    private static List<Input> inputs(String path, LeaderboardRequest.Cell given, Metric metric) {
        var own = Input.normal("own", result(path, given, metric), "");
        var shared = given.shared() == null
                ? Stream.<Input>of()
                : Entries.read(path + ".shared", given.shared(), 0, MOST_CAUSES, BoardCell::shared).stream();
        return Stream.concat(Stream.of(own), shared).toList();
    }

    /** Under yield a working cell is one and a failed one none, for certain. */
    private static Estimate result(String path, LeaderboardRequest.Cell given, Metric metric) {
        var value = metric instanceof Yield
                ? Ranges.RESULT.or(1, path + ".value", given.value())
                : Ranges.RESULT.need(path + ".value", given.value());
        return metric instanceof Yield ? Estimate.exact(1) : new Estimate(value, uncertainty(path, given));
    }

    private static double uncertainty(String path, LeaderboardRequest.Cell given) {
        var own = Ranges.RESULT.maybe(path + ".standardUncertainty", given.standardUncertainty());
        if (given.low() == null && given.high() == null) {
            return Objects.requireNonNullElse(own, 0.0);
        }
        if (own != null) {
            throw Refusal.of(ProblemCode.CALCULATION_EITHER)
                    .field(path + ".standardUncertainty")
                    .limit("standardUncertainty, low + high");
        }
        return halfWidth(path, given) / Estimate.COVERAGE_95;
    }

    private static double halfWidth(String path, LeaderboardRequest.Cell given) {
        var low = Ranges.RESULT_END.need(path + ".low", given.low());
        var high = Ranges.RESULT_END.need(path + ".high", given.high());
        if (!(low <= high)) {
            throw Refusal.of(ProblemCode.CALCULATION_OUT_OF_RANGE)
                    .field(path + ".high")
                    .value(high)
                    .limit("[" + low + ", ∞)");
        }
        return (high - low) / 2;
    }

    private static Input shared(String path, LeaderboardRequest.Shared given) {
        var cause = Named.line(path + ".cause", given.cause());
        var u = Ranges.RESULT.need(path + ".standardUncertainty", given.standardUncertainty());
        return Input.normal(cause, 0, "", u).sharedBy(cause);
    }

    private static String station(String path, @Nullable String station, boolean needed) {
        return station == null && !needed ? "" : Named.line(path, station);
    }
}
