package org.berrywatt.server.findings;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.berrywatt.cell.BuildCatalogue;
import org.berrywatt.cell.BuildParameter;
import org.berrywatt.contract.FindingAnswer;
import org.berrywatt.contract.LeaderboardState;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamStanding;
import org.berrywatt.findings.Observation;
import org.berrywatt.findings.ParameterFinding;
import org.berrywatt.server.cell.Cell;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.leaderboard.Leaderboards;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Service;

/** Build parameters against the performance of a class's cells. */
@Service
class Findings {

    private final Cells cells;
    private final Leaderboards leaderboards;

    Findings(Cells cells, Leaderboards leaderboards) {
        this.cells = cells;
        this.leaderboards = leaderboards;
    }

    /** @throws Refusal {@code choice.unknown} for a parameter that the catalogue does not know, {@code notFound} */
    FindingAnswer about(String parameterKey, UUID labDayId) {
        BuildParameter parameter = BuildCatalogue.of(parameterKey).orElseThrow(() -> unknown(parameterKey));
        List<Specimen> specimens = specimens(leaderboards.of(labDayId), parameter);
        List<Observation> observations =
                specimens.stream().map(Specimen::observation).toList();
        return FindingAnswers.of(labDayId, parameter, specimens, finding(parameter, observations));
    }

    private List<Specimen> specimens(LeaderboardState state, BuildParameter parameter) {
        Map<UUID, Cell> byId = cells.ofLabDay(state.labDayId()).stream().collect(toMap(Cell::id, Function.identity()));
        return state.teams().stream()
                .flatMap(team -> specimens(team, byId, parameter))
                .toList();
    }

    /** A cell registered between the two looks is left for the next one. */
    private static Stream<Specimen> specimens(TeamStanding team, Map<UUID, Cell> byId, BuildParameter parameter) {
        return team.cells().stream()
                .flatMap(standing -> Optional.ofNullable(byId.get(standing.cellId()))
                        .map(cell -> Specimen.of(cell, team, standing, parameter))
                        .stream());
    }

    private static ParameterFinding finding(BuildParameter parameter, List<Observation> observations) {
        return parameter.kind() == BuildParameter.Kind.NUMBER
                ? ParameterFinding.onNumbers(observations)
                : ParameterFinding.onSorts(observations);
    }

    private static Refusal unknown(String key) {
        String known = BuildCatalogue.all().stream().map(BuildParameter::key).collect(joining(", "));
        return Refusal.of(ProblemCode.CHOICE_UNKNOWN)
                .field("parameter")
                .value(key)
                .limit(known);
    }
}
