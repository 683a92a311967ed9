package org.berrywatt.leaderboard;

import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** Boards for tests, and what stands on them. */
final class Boards {
    private Boards() {}

    static Terms terms(Count count, int cellsPerTeam, boolean entryOpen) {
        return new Terms(new Rule(new PowerDensity(), count), cellsPerTeam, entryOpen, Teams.TRIALS);
    }

    static List<Standing> rank(TeamCells... teams) {
        return Board.of(List.of(teams), terms(Count.MEDIAN, 3, true)).standings();
    }

    static double figure(TeamCells team) {
        return figureOf(rank(team).get(0)).value();
    }

    static TeamFigure figureOf(Standing standing) {
        return Objects.requireNonNull(standing.figure());
    }

    static List<Integer> places(List<Standing> standings) {
        return standings.stream()
                .map(standing -> Objects.requireNonNull(standing.place()).number())
                .toList();
    }

    static Place place(List<Standing> standings, String team) {
        return Objects.requireNonNull(standing(standings, team).place());
    }

    static Standing standing(List<Standing> standings, String team) {
        UUID id = Teams.id(team);
        return standings.stream()
                .filter(it -> it.teamId().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
