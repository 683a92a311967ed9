package org.berrywatt.server.leaderboard;

import java.util.HashSet;
import java.util.List;
import org.berrywatt.leaderboard.Board;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.Terms;

/** A day's board with what it was made from. */
record DayBoard(Terms terms, List<TeamCells> teams, Board board) {

    static DayBoard of(Terms terms, List<TeamCells> teams) {
        return new DayBoard(terms, teams, Board.of(teams, terms));
    }

    DayBoard now(Terms agreed, List<TeamCells> all) {
        return agreed.equals(terms) ? new DayBoard(terms, all, changed(all)) : of(agreed, all);
    }

    private Board changed(List<TeamCells> all) {
        var known = new HashSet<>(teams);
        var there = all.stream().map(TeamCells::teamId).toList();
        Board now = board;
        for (TeamCells team : teams) {
            now = there.contains(team.teamId()) ? now : now.without(team.teamId());
        }
        for (TeamCells team : all) {
            now = known.contains(team) ? now : now.with(team);
        }
        return now;
    }
}
