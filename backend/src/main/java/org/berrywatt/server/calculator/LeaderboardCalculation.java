package org.berrywatt.server.calculator;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.berrywatt.contract.Figure;
import org.berrywatt.contract.calculation.LeaderboardAnswer;
import org.berrywatt.contract.calculation.LeaderboardRequest;
import org.berrywatt.contract.calculation.LeaderboardRequest.Scoring;
import org.berrywatt.leaderboard.Board;
import org.berrywatt.leaderboard.Place;
import org.berrywatt.leaderboard.PowerDensity;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Standing;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.TeamFigure;
import org.berrywatt.leaderboard.Terms;
import org.berrywatt.server.typed.Given;
import org.berrywatt.server.typed.Rules;
import org.berrywatt.uncertainty.Deviates;
import org.jspecify.annotations.Nullable;

/** Teams in order of the results of their cells. */
final class LeaderboardCalculation {

    private static final int MOST_CELLS = 240;
    private static final int MOST_PER_TEAM = 12;
    private static final int FEWEST_TRIALS = 1000;
    private static final int MOST_TRIALS = 10_000;

    private final Rule rule;
    private final List<BoardCell> cells;
    private final BoardScores scores;
    private final int trials;

    private LeaderboardCalculation(Rule rule, List<BoardCell> cells, BoardScores scores, int trials) {
        this.rule = rule;
        this.cells = cells;
        this.scores = scores;
        this.trials = trials;
    }

    static LeaderboardAnswer of(LeaderboardRequest request) {
        var scoring = Given.need("rule", request.rule());
        var rule = rule(scoring);
        var cells = Entries.read(
                "cells", request.cells(), 1, MOST_CELLS, (path, cell) -> BoardCell.of(path, cell, rule.metric()));
        Named.requireDistinct("cells", cells.stream().map(BoardCell::name).toList());
        var deviates = new Deviates(Objects.requireNonNullElse(request.seed(), 1L), trials(request));
        var scores = new BoardScores(rule, scoring.control(), cells, deviates);
        return new LeaderboardCalculation(rule, cells, scores, deviates.trials()).answer(scoring);
    }

    private static Rule rule(Scoring scoring) {
        var metric = Keys.METRICS.or(new PowerDensity(), "rule.metric", scoring.metric());
        var count = Keys.COUNTS.need("rule.count", scoring.count());
        return Rules.of("rule.count", metric, count);
    }

    /** Numbers that the request has drawn, at the most. */
    static long draws(LeaderboardRequest request) {
        var cells = request.cells();
        return cells == null ? 0 : (long) Math.min(cells.size(), MOST_CELLS) * trials(request);
    }

    private static int trials(LeaderboardRequest request) {
        var trials = request.trials();
        return trials == null ? MOST_TRIALS : Given.between("trials", trials, FEWEST_TRIALS, MOST_TRIALS);
    }

    private LeaderboardAnswer answer(Scoring scoring) {
        var teams = cells.stream().collect(groupingBy(BoardCell::team, TreeMap::new, toList()));
        var terms = new Terms(rule, cellsPerTeam(scoring), Boolean.TRUE.equals(scoring.entryOpen()), trials);
        var names = teams.keySet().stream().collect(toMap(BoardCell::id, name -> name));
        var board = Board.of(
                teams.entrySet().stream()
                        .map(team -> entries(team.getKey(), team.getValue()))
                        .toList(),
                terms);
        return new LeaderboardAnswer(board.standings().stream()
                .map(standing -> entry(standing, names))
                .toList());
    }

    private static int cellsPerTeam(Scoring scoring) {
        var given = scoring.cellsPerTeam();
        return given == null ? 1 : Given.between("rule.cellsPerTeam", given, 1, MOST_PER_TEAM);
    }

    private TeamCells entries(String team, List<BoardCell> declared) {
        return new TeamCells(
                BoardCell.id(team), declared.stream().map(scores::entry).toList());
    }

    private LeaderboardAnswer.Entry entry(Standing standing, Map<UUID, String> teams) {
        var place = Optional.ofNullable(standing.place());
        var side = standing.side();
        return new LeaderboardAnswer.Entry(
                Objects.requireNonNull(teams.get(standing.teamId())),
                place.map(Place::number).orElse(null),
                place.map(Place::best).orElse(null),
                place.map(Place::worst).orElse(null),
                place.map(Place::chanceAboveNext).orElse(null),
                figure(standing.figure()),
                standing.counted(),
                standing.failed(),
                standing.outstanding(),
                standing.excluded(),
                side.geometricDeviation(),
                cellName(side.bestVerifiedCell()),
                side.bestVerified());
    }

    private @Nullable String cellName(@Nullable UUID cellId) {
        return cells.stream()
                .filter(cell -> cell.id().equals(cellId))
                .map(BoardCell::cell)
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Figure figure(@Nullable TeamFigure figure) {
        return figure == null
                ? null
                : new Figure(
                        figure.value(),
                        figure.standardUncertainty(),
                        figure.interval().low(),
                        figure.interval().high());
    }
}
