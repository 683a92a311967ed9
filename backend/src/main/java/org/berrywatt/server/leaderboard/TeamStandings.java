package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.toMap;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.leaderboard.Ranking;
import org.berrywatt.leaderboard.Rule;
import org.berrywatt.leaderboard.Standing;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.team.Team;

/** The teams of a day, ranked by their judged cells. */
final class TeamStandings {

    private final DayRecord record;
    private final Map<UUID, Team> teams;
    private final Map<UUID, List<Judged>> cells;

    TeamStandings(DayRecord record) {
        CellJudge judge = new CellJudge(record);
        this.record = record;
        this.teams = record.teams().stream().collect(toMap(Team::id, Function.identity()));
        this.cells = record.teams().stream()
                .collect(toMap(
                        Team::id,
                        team -> record.cellsOf(team).stream().map(judge::judge).toList()));
    }

    /** Best first; teams without a place last, in order of creation. */
    List<TeamStanding> ranked() {
        List<TeamStanding> all = standings();
        return Stream.concat(
                        all.stream().filter(team -> team.place() != null),
                        all.stream()
                                .filter(team -> team.place() == null)
                                .sorted(Comparator.comparingInt(TeamStanding::mark)))
                .toList();
    }

    private List<TeamStanding> standings() {
        LabDay day = record.day();
        List<TeamCells> declared = record.teams().stream().map(this::declared).toList();
        return Ranking.of(declared, rule(day), day.cellsPerTeam(), day.entryOpen()).stream()
                .map(this::standing)
                .toList();
    }

    private TeamCells declared(Team team) {
        return new TeamCells(
                team.id(), judged(team).stream().map(CellStandings::entry).toList());
    }

    private TeamStanding standing(Standing standing) {
        Team team = Objects.requireNonNull(teams.get(standing.teamId()));
        return new TeamStanding(
                team.id(),
                team.name(),
                team.mark(),
                standing.place(),
                standing.placeLow(),
                standing.placeHigh(),
                Figures.ofNullable(standing.powerDensityWm2()),
                TeamRemarks.of(standing, record.day().entryOpen()),
                judged(team).stream().map(CellStandings::of).toList());
    }

    private List<Judged> judged(Team team) {
        return cells.getOrDefault(team.id(), List.of());
    }

    private static Rule rule(LabDay day) {
        return Arrays.stream(Rule.values())
                .filter(rule -> rule.key().equals(day.rule()))
                .findFirst()
                .orElseThrow();
    }
}
