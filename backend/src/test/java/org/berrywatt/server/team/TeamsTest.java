package org.berrywatt.server.team;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.berrywatt.server.team.NewPhone.TEAM;
import static org.berrywatt.server.team.NewPhone.whoHolds;

import java.util.Locale;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamRequest;
import org.berrywatt.contract.WhoAnswer;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class TeamsTest {

    private static final String CLAIM = "kx9-4f3a-77b2-q1m8";
    private final UUID id = UUID.randomUUID();
    private final Bench bench;
    private final Api teacher;
    private final Api phone;

    @Autowired
    TeamsTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        teacher = bench.teacher;
        phone = teacher.asNobody();
    }

    @Test
    void letsAPhoneWithTheDaysCodeNameATeamAndBelongToIt() {
        var code = bench.code().toLowerCase(Locale.ROOT).replaceFirst("(...)", "$1 - ");
        var created = phone.put(new TeamRequest(null, code, "  Sloe   Gin "), TEAM, id);
        var team = phone.answer(created, TeamAnswer.class);
        assertThat(team.name()).isEqualTo("Sloe Gin");
        assertThat(team.mark()).isZero();
        assertThat(whoHolds(created, phone)).isEqualTo(new WhoAnswer("team", null, id, bench.day.id(), false, false));
    }

    @Test
    void marksTeamsInTheOrderOfTheirCreation() {
        bench.team("Sloe");
        bench.team("Elder");
        assertThat(teacher.answers(teacher.get("/api/labdays/{id}/teams", bench.day.id()), TeamAnswer.class))
                .extracting(TeamAnswer::name, TeamAnswer::mark)
                .containsExactly(tuple("Sloe", 0), tuple("Elder", 1));
    }

    @Test
    void letsAPhoneInAgainThatLostTheAnswerAndKeptItsClaim() {
        var request = new TeamRequest(null, bench.code(), "Sloe", CLAIM);
        var first = phone.answer(phone.put(request, TEAM, id), TeamAnswer.class);
        var again = phone.put(request, TEAM, id);
        assertThat(phone.answer(again, TeamAnswer.class)).isEqualTo(first);
        assertThat(whoHolds(again, phone).teamId()).isEqualTo(id);
    }

    @Test
    void letsNobodyInWhoRepeatsARequestWithoutItsClaim() {
        var request = new TeamRequest(null, bench.code(), "Sloe");
        phone.put(request, TEAM, id);
        var again = phone.put(request, TEAM, id);
        assertThat(phone.answer(again, TeamAnswer.class).code()).isNull();
        assertThat(again).doesNotContainHeader("Set-Cookie");
    }

    @Test
    void refusesAnotherClaimUnderTheSameId() {
        phone.put(new TeamRequest(null, bench.code(), "Sloe", CLAIM), TEAM, id);
        var guess = new TeamRequest(null, bench.code(), "Sloe", CLAIM + "x");
        phone.problem(phone.put(guess, TEAM, id), ProblemCode.ID_REUSED);
    }

    @Test
    void refusesANameThatDiffersFromAnotherOnlyInCaseOrWidth() {
        bench.team("Sloe Gin");
        var refused = teacher.put(new TeamRequest(bench.day.id(), null, "ＳＬＯＥ  gin"), TEAM, id);
        assertThat(refused).hasStatus(409);
        assertThat(teacher.problem(refused, ProblemCode.NAME_TAKEN).field()).isEqualTo("name");
    }

    @ParameterizedTest(name = "name {0} is refused with {1}")
    @CsvSource({
        "'   ', text.empty",
        "'1234567890123456789012345', text.tooLong",
        "'Sl\u200boe', text.unfit",
        "'Sloe\u202eniG', text.unfit",
        "'Sl\u0007oe', text.unfit",
        "'\u3164', text.unfit",
        "'Z\u0351\u036b\u0343\u036a\u0302a', text.unfit"
    })
    void refusesNamesThatCannotBeReadOnTheWall(String name, String code) {
        var refused = phone.put(new TeamRequest(null, bench.code(), name), TEAM, id);
        assertThat(refused).hasStatus(422);
        assertThat(phone.problem(refused, code).field()).isEqualTo("name");
    }

    @Test
    void takesANameOfTwentyFourCharactersOfAnyScript() {
        var name = "Ежевика 黑莓 Żurawina 🫐🫐🫐🫐";
        var team = phone.answer(phone.put(new TeamRequest(null, bench.code(), name), TEAM, id), TeamAnswer.class);
        assertThat(team.name()).isEqualTo(name);
    }

    @Test
    void letsNoPhoneNameATeamWhenTheDayIsClosedButTheTeacher() {
        bench.setEntry(false);
        var refused = phone.put(new TeamRequest(null, bench.code(), "Sloe"), TEAM, id);
        assertThat(refused).hasStatus(409);
        phone.problem(refused, ProblemCode.LABDAY_CLOSED);
        bench.team("Elder");
    }

    @Test
    void showsATeamItsOwnCodeAndNoOther() {
        var sloe = bench.team("Sloe");
        bench.team("Elder");
        var seen = sloe.answers(sloe.get("/api/labdays/{id}/teams", bench.day.id()), TeamAnswer.class);
        assertThat(seen.get(0).code()).isNotNull();
        assertThat(seen.get(1).code()).isNull();
    }
}
