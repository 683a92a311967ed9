package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.toMap;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.leaderboard.Metric;
import org.berrywatt.leaderboard.Place;
import org.berrywatt.leaderboard.Standing;
import org.berrywatt.leaderboard.TeamCells;
import org.berrywatt.leaderboard.Terms;
import org.berrywatt.server.labday.LabDay;
import org.berrywatt.server.team.Team;

/** The teams of a day, ranked by their judged cells. */
final class TeamStandings {

    private final DayRecord record;
    private final Map<UUID, Team> teams;
    private final Map<UUID, List<Rated>> cells;
    private final KnownBoards boards;
    private final Rating rating;
    private final Metric metric;

    TeamStandings(DayRecord record, KnownCells known, KnownBoards boards) {
        this.record = record;
        this.boards = boards;
        this.rating = new Rating(record, known);
        this.metric = rating.rule().metric();
        this.teams = record.teams().stream().collect(toMap(Team::id, Function.identity()));
        this.cells = record.teams().stream()
                .collect(toMap(
                        Team::id,
                        team -> record.cellsOf(team).stream().map(rating::rate).toList()));
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
        Terms terms = new Terms(rating.rule(), day.cellsPerTeam(), day.entryOpen(), Draws.TRIALS);
        return boards.board(day.id(), terms, declared).standings().stream()
                .map(this::standing)
                .toList();
    }

    private TeamCells declared(Team team) {
        return new TeamCells(team.id(), rated(team).stream().map(Rated::entry).toList());
    }

    private TeamStanding standing(Standing standing) {
        Team team = Objects.requireNonNull(teams.get(standing.teamId()));
        Optional<Place> place = Optional.ofNullable(standing.place());
        return new TeamStanding(
                team.id(),
                team.name(),
                team.mark(),
                place.map(Place::number).orElse(null),
                place.map(Place::best).orElse(null),
                place.map(Place::worst).orElse(null),
                place.map(Place::chanceAboveNext).orElse(null),
                Figures.of(standing.figure(), metric),
                SideAnswers.of(standing.side(), rated(team), rating),
                TeamRemarks.of(standing, rating.rule(), record.day().entryOpen()),
                rated(team).stream().map(cell -> cell.standing(metric)).toList());
    }

    private List<Rated> rated(Team team) {
        return cells.getOrDefault(team.id(), List.of());
    }
}
