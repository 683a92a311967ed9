package org.berrywatt.server.leaderboard;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.contract.CellStanding;
import org.berrywatt.contract.LightPreviewAnswer;
import org.berrywatt.contract.LightPreviewAnswer.CellMove;
import org.berrywatt.contract.LightPreviewAnswer.TeamMove;
import org.berrywatt.contract.RankedFigure;
import org.berrywatt.contract.TeamStanding;
import org.jspecify.annotations.Nullable;

/**
 * What differs between two leaderboards of the same teams and cells.
 *
 * @param before by team
 * @param after best first
 */
record LightMoves(Map<UUID, TeamStanding> before, List<TeamStanding> after) {

    static LightPreviewAnswer between(List<TeamStanding> before, List<TeamStanding> after) {
        return new LightMoves(before.stream().collect(toMap(TeamStanding::teamId, Function.identity())), after)
                .answer();
    }

    private LightPreviewAnswer answer() {
        return new LightPreviewAnswer(
                after.stream().flatMap(this::cells).toList(),
                after.stream().flatMap(team -> move(was(team), team).stream()).toList());
    }

    private TeamStanding was(TeamStanding team) {
        return Objects.requireNonNull(before.get(team.teamId()));
    }

    private Stream<CellMove> cells(TeamStanding team) {
        Map<UUID, CellStanding> earlier =
                was(team).cells().stream().collect(toMap(CellStanding::cellId, Function.identity()));
        return team.cells().stream().flatMap(cell -> move(team, earlier.get(cell.cellId()), cell).stream());
    }

    private static Optional<CellMove> move(TeamStanding team, @Nullable CellStanding was, CellStanding is) {
        return was == null || same(was, is)
                ? Optional.empty()
                : Optional.of(new CellMove(is.cellId(), is.label(), team.name(), was, is));
    }

    private static boolean same(CellStanding was, CellStanding is) {
        return was.standing().equals(is.standing()) && same(was.figure(), is.figure());
    }

    private static Optional<TeamMove> move(TeamStanding was, TeamStanding is) {
        return Objects.equals(was.place(), is.place()) && same(was.figure(), is.figure())
                ? Optional.empty()
                : Optional.of(new TeamMove(
                        is.teamId(), is.name(), is.mark(), was.place(), is.place(), was.figure(), is.figure()));
    }

    /** By value: an interval that widens a little because the station now drifts otherwise moves nobody. */
    private static boolean same(@Nullable RankedFigure one, @Nullable RankedFigure other) {
        return Objects.equals(value(one), value(other));
    }

    private static @Nullable Double value(@Nullable RankedFigure figure) {
        return figure == null ? null : figure.value();
    }
}
