package org.berrywatt.server.team;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.team.NewPhone.JOIN;
import static org.berrywatt.server.team.NewPhone.TEAM;
import static org.berrywatt.server.team.NewPhone.whoHolds;

import java.util.UUID;
import org.berrywatt.contract.JoinAnswer;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.LabDayAnswer;
import org.berrywatt.contract.LabDayRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class JoiningTest {

    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Api teacher;
    private final Api phone;

    @Autowired
    JoiningTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        teacher = bench.teacher;
        phone = teacher.asNobody();
    }

    @Test
    void letsNoPhoneNameATeamWhereTheTeacherMakesThem() {
        var code = requireNonNull(dayWithoutOwnTeams().code());
        var refused = phone.put(new TeamRequest(null, code, "Sloe"), TEAM, id);
        assertThat(refused).hasStatus(403);
        phone.problem(refused, ProblemCode.TEAM_CODE_NEEDED);
        phone.problem(phone.post(new JoinRequest(code), JOIN), ProblemCode.TEAM_CODE_NEEDED);
    }

    @Test
    void joinsATeamByItsOwnCode() {
        var created = phone.put(new TeamRequest(null, bench.code(), "Sloe"), TEAM, id);
        var code = requireNonNull(phone.answer(created, TeamAnswer.class).code());
        var joined = phone.post(new JoinRequest(code), JOIN);
        assertThat(phone.answer(joined, JoinAnswer.class))
                .isEqualTo(new JoinAnswer("team", bench.day.id(), "Berry day", id, "Sloe"));
        assertThat(whoHolds(joined, phone).teamId()).isEqualTo(id);
    }

    @Test
    void opensTheNamingOfATeamWithTheDaysCode() {
        var opened = phone.post(new JoinRequest(bench.code()), JOIN);
        assertThat(phone.answer(opened, JoinAnswer.class))
                .isEqualTo(new JoinAnswer("labDay", bench.day.id(), "Berry day", null, null));
        assertThat(opened).doesNotContainHeader("Set-Cookie");
    }

    @Test
    void tellsNothingAboutAWrongCode() {
        var joining = phone.problem(phone.post(new JoinRequest("AAAAAA"), JOIN), ProblemCode.SIGN_IN_REFUSED);
        var empty = phone.problem(phone.post(new JoinRequest(""), JOIN), ProblemCode.SIGN_IN_REFUSED);
        var naming = phone.problem(
                phone.put(new TeamRequest(null, "AAAAAA", "Sloe"), TEAM, id), ProblemCode.SIGN_IN_REFUSED);
        assertThat(joining).isEqualTo(empty).isEqualTo(naming);
    }

    @Test
    void slowsDownWhoeverTriesManyCodes() {
        var guesser = phone.from("192.0.2.77");
        for (int i = 0; i < 30; i++) {
            guesser.problem(guesser.post(new JoinRequest("AAAAAA"), JOIN), ProblemCode.SIGN_IN_REFUSED);
        }
        var slowed = guesser.post(new JoinRequest(bench.code()), JOIN);
        assertThat(slowed).hasStatus(429).containsHeader("Retry-After");
        guesser.problem(slowed, ProblemCode.SLOW_DOWN);
        var naming = guesser.put(new TeamRequest(null, bench.code(), "Sloe"), TEAM, id);
        guesser.problem(naming, ProblemCode.SLOW_DOWN);
    }

    private LabDayAnswer dayWithoutOwnTeams() {
        var some = Bench.dayRequest("Made by the teacher");
        var request = new LabDayRequest(
                some.title(),
                some.date(),
                some.referenceIrradiance(),
                some.referenceArea(),
                some.rule(),
                some.cellsPerTeam(),
                false);
        return teacher.answer(teacher.put(request, "/api/labdays/{id}", UUID.randomUUID()), LabDayAnswer.class);
    }
}
