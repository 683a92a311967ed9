package org.berrywatt.server.team;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Receipts;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Teams of a lab day. */
@Service
public class Teams {

    private final TeamRepository teams;
    private final TeamRegistry registry;
    private final Receipts receipts;

    Teams(TeamRepository teams, TeamRegistry registry, Receipts receipts) {
        this.teams = teams;
        this.registry = registry;
        this.receipts = receipts;
    }

    /**
     * Creates a team: a teacher names the lab day, a phone shows the day's code.
     *
     * @return the team; its code only for those who may have it: a teacher, the phone that creates it, and the same phone
     *     when it asks again with its claim
     * @throws Refusal {@code access.refused} for a wrong code, {@code team.codeNeeded} when phones may not create teams,
     *     {@code labday.closed} for a phone after closing, {@code name.taken}, or when the name is refused
     */
    @Transactional
    public TeamAnswer put(UUID id, TeamRequest request, Caller caller, Instant at) {
        var application = registry.application(request, caller);
        return receipts.once(
                id, request, () -> registry.create(id, application, at), () -> again(id, application, caller));
    }

    /** The teams of a day in order of creation, without those joined to another; codes only for those who may have them. */
    @Transactional(readOnly = true)
    public List<TeamAnswer> list(UUID labDayId, Caller caller) {
        caller.requireLabDay(labDayId);
        return teams.findByLabDayIdAndMergedIntoIsNullOrderByMark(labDayId).stream()
                .map(team -> TeamAnswers.of(team, caller.speaksFor(team.view().id())))
                .toList();
    }

    /** The team of an id, also one that was joined to another, or empty. */
    @Transactional(readOnly = true)
    public Optional<Team> find(UUID id) {
        return teams.findById(id).map(TeamEntity::view);
    }

    /** The teams of a day in order of creation, without those joined to another. */
    @Transactional(readOnly = true)
    public List<Team> ofLabDay(UUID labDayId) {
        return teams.findByLabDayIdAndMergedIntoIsNullOrderByMark(labDayId).stream()
                .map(TeamEntity::view)
                .toList();
    }

    /** When each team of a day was made. */
    @Transactional(readOnly = true)
    public Map<UUID, Instant> madeAt(UUID labDayId) {
        return teams.findByLabDayIdAndMergedIntoIsNullOrderByMark(labDayId).stream()
                .collect(Collectors.toMap(team -> team.view().id(), TeamEntity::createdAt));
    }

    private TeamAnswer again(UUID id, TeamApplication application, Caller caller) {
        var team = teams.findById(id).orElseThrow();
        return TeamAnswers.of(
                team, application.claimed() || caller.speaksFor(team.view().id()));
    }
}
