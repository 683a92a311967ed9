package org.berrywatt.server.team;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Predicate;
import org.berrywatt.contract.TeamAnswer;
import org.springframework.stereotype.Component;

/** Teams as they travel. */
@Component
class TeamAnswers {

    private final TeamRepository teams;

    TeamAnswers(TeamRepository teams) {
        this.teams = teams;
    }

    TeamAnswer of(TeamEntity team, boolean withCode) {
        return answer(
                team,
                withCode,
                ids(teams.findByMergedIntoOrderByMark(team.view().id())));
    }

    /**
     * The teams of a day in order of creation, without those joined to another.
     *
     * @param mayHaveCode whether whoever asks may have the code of a team
     */
    List<TeamAnswer> ofLabDay(UUID labDayId, Predicate<UUID> mayHaveCode) {
        List<TeamEntity> all = teams.findByLabDayIdOrderByMark(labDayId);
        Map<UUID, List<UUID>> joined = all.stream()
                .filter(team -> team.mergedInto() != null)
                .collect(groupingBy(
                        team -> Objects.requireNonNull(team.mergedInto()),
                        mapping(team -> team.view().id(), toList())));
        return all.stream()
                .filter(team -> team.mergedInto() == null)
                .map(team -> answer(
                        team,
                        mayHaveCode.test(team.view().id()),
                        joined.getOrDefault(team.view().id(), List.of())))
                .toList();
    }

    private static TeamAnswer answer(TeamEntity team, boolean withCode, List<UUID> joined) {
        var view = team.view();
        return new TeamAnswer(
                view.id(), view.labDayId(), view.name(), view.mark(), withCode ? team.code() : null, joined);
    }

    private static List<UUID> ids(List<TeamEntity> teams) {
        return teams.stream().map(team -> team.view().id()).toList();
    }
}
