package org.berrywatt.server.team;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.berrywatt.contract.ProblemCode;
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
    private final TeamAnswers answers;
    private final TeamRegistry registry;
    private final Receipts receipts;

    Teams(TeamRepository teams, TeamAnswers answers, TeamRegistry registry, Receipts receipts) {
        this.teams = teams;
        this.answers = answers;
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
        return answers.ofLabDay(labDayId, caller::speaksFor);
    }

    /** The team of an id, also one that was joined to another, or empty. */
    @Transactional(readOnly = true)
    public Optional<Team> find(UUID id) {
        return teams.findById(id).map(TeamEntity::view);
    }

    /** The team of an id, or where it was joined to another one, that one. */
    @Transactional(readOnly = true)
    public Optional<Team> remaining(UUID id) {
        return teams.idOfRemaining(id).flatMap(teams::findById).map(TeamEntity::view);
    }

    /**
     * The remaining team of an id, for its phones and for teachers.
     *
     * @throws Refusal {@code access.signInNeeded}, {@code access.notAllowed} or {@code notFound}
     */
    @Transactional(readOnly = true)
    public Team requireOwn(UUID id, Caller caller) {
        caller.requireSomebody();
        var team = remaining(id)
                .orElseThrow(() -> Refusal.of(ProblemCode.NOT_FOUND).field("teamId"));
        caller.requireTeam(team.id());
        return team;
    }

    /** Of how many teams this one is made: 1 unless others were joined to it. */
    @Transactional(readOnly = true)
    public int parts(UUID id) {
        return 1 + teams.findByMergedIntoOrderByMark(id).size();
    }

    /** The team itself, and those that were joined to it only after this moment. */
    @Transactional(readOnly = true)
    public Set<UUID> partsAt(UUID id, Instant moment) {
        var later = teams.findByMergedIntoOrderByMark(id).stream()
                .filter(team -> team.wasApartAt(moment))
                .map(team -> team.view().id());
        return Stream.concat(Stream.of(id), later).collect(Collectors.toSet());
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
        return answers.of(
                team, application.claimed() || caller.speaksFor(team.view().id()));
    }
}
