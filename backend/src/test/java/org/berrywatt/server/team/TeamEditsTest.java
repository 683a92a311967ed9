package org.berrywatt.server.team;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamCodeRequest;
import org.berrywatt.contract.TeamMergerRequest;
import org.berrywatt.contract.TeamNameRequest;
import org.berrywatt.contract.WhoAnswer;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class TeamEditsTest {

    private final Bench bench;
    private final Api teacher;
    private final UUID newts;
    private final UUID wrens;

    @Autowired
    TeamEditsTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        teacher = bench.teacher;
        newts = Bench.teamId(bench.team("Newts"));
        wrens = Bench.teamId(bench.team("Wrens"));
    }

    @Test
    void renamesATeamAndTakesTheSameTwice() {
        assertThat(rename(newts, " Great  newts ")).hasStatusOk();
        assertThat(rename(newts, "Great newts")).hasStatusOk();
        assertThat(teams()).extracting(TeamAnswer::name).containsExactly("Great newts", "Wrens");
        assertThat(rename(newts, "GREAT newts")).hasStatusOk();
    }

    @Test
    void refusesANameThatAnotherTeamHas() {
        assertThat(teacher.problem(rename(newts, "wrens"), ProblemCode.NAME_TAKEN)
                        .field())
                .isEqualTo("name");
    }

    @Test
    void handsOutANewCodeAndLeavesThePhonesThatJoinedBefore() {
        var old = code(newts);
        var phone = join(old);
        var renewed = renew(UUID.randomUUID(), false);
        assertThat(renewed).isNotEqualTo(old).isEqualTo(code(newts));
        teacher.problem(join(old), ProblemCode.SIGN_IN_REFUSED);
        assertThat(join(renewed)).hasStatusOk();
        assertThat(who(phone).teamId()).isEqualTo(newts);
    }

    @Test
    void signsTheOldPhonesOutWhenAsked() {
        var phone = join(code(newts));
        renew(UUID.randomUUID(), true);
        assertThat(who(phone).kind()).isEqualTo("nobody");
    }

    @Test
    void renewsACodeOnceHoweverOftenItIsSent() {
        var id = UUID.randomUUID();
        assertThat(renew(id, false)).isEqualTo(renew(id, false));
    }

    @Test
    void isForTeachersOnly() {
        var phone = phoneOf(newts);
        assertThat(phone.put(new TeamNameRequest("Kings"), "/api/teams/{id}/name", newts))
                .hasStatus(403);
        assertThat(phone.put(new TeamMergerRequest(wrens), "/api/teams/{id}/merger", newts))
                .hasStatus(403);
        assertThat(phone.put(new TeamCodeRequest(newts, true), "/api/team-codes/{id}", UUID.randomUUID()))
                .hasStatus(403);
        assertThat(teams())
                .extracting(TeamAnswer::name, TeamAnswer::mark)
                .containsExactly(tuple("Newts", 0), tuple("Wrens", 1));
    }

    private MvcTestResult rename(UUID team, String name) {
        return teacher.put(new TeamNameRequest(name), "/api/teams/{id}/name", team);
    }

    private String renew(UUID id, boolean endPasses) {
        var answer = teacher.put(new TeamCodeRequest(newts, endPasses), "/api/team-codes/{id}", id);
        return Objects.requireNonNull(teacher.answer(answer, TeamAnswer.class).code());
    }

    private List<TeamAnswer> teams() {
        return teacher.answers(teacher.get("/api/labdays/{id}/teams", bench.day.id()), TeamAnswer.class);
    }

    private String code(UUID team) {
        return teams().stream()
                .filter(it -> it.id().equals(team))
                .map(TeamAnswer::code)
                .findFirst()
                .map(Objects::requireNonNull)
                .orElseThrow();
    }

    private Api phoneOf(UUID team) {
        return teacher.asTeam(team, bench.day.id());
    }

    private MvcTestResult join(String code) {
        return teacher.asNobody().post(new JoinRequest(code), "/api/access/join");
    }

    private WhoAnswer who(MvcTestResult joined) {
        var cookies = joined.getResponse().getCookies();
        var answer = teacher.server().get().uri("/api/access").cookie(cookies).exchange();
        return teacher.answer(answer, WhoAnswer.class);
    }
}
