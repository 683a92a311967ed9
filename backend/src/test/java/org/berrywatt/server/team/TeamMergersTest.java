package org.berrywatt.server.team;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.CellAnswer;
import org.berrywatt.contract.FinalRequest;
import org.berrywatt.contract.HeaterSlotAnswer;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.IncidentAnswer;
import org.berrywatt.contract.IncidentRequest;
import org.berrywatt.contract.JoinAnswer;
import org.berrywatt.contract.JoinRequest;
import org.berrywatt.contract.LessonAnswer;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.PhoneAnswer;
import org.berrywatt.contract.PhoneRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.TeamAnswer;
import org.berrywatt.contract.TeamMergerRequest;
import org.berrywatt.contract.TimerAnswer;
import org.berrywatt.contract.TimerRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.contract.WhoAnswer;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class TeamMergersTest {

    private final Bench bench;
    private final Api teacher;
    private final UUID newts;
    private final UUID wrens;

    @Autowired
    TeamMergersTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        teacher = bench.teacher;
        newts = Bench.teamId(bench.team("Newts"));
        wrens = Bench.teamId(bench.team("Wrens"));
    }

    @Test
    void joinsATeamToAnotherWithItsCellsPhonesAndCode() {
        var cell = bench.cell(phoneOf(newts), "N1");
        var code = code(newts);
        var phone = join(code);

        var remaining = teacher.answer(merge(newts, wrens), TeamAnswer.class);

        assertThat(remaining.id()).isEqualTo(wrens);
        assertThat(teams()).extracting(TeamAnswer::id).containsExactly(wrens);
        assertThat(teacher.answer(teacher.get("/api/cells/{id}", cell), CellAnswer.class)
                        .teamId())
                .isEqualTo(wrens);
        assertThat(who(phone).teamId()).isEqualTo(wrens);
        assertThat(teacher.answer(join(code), JoinAnswer.class))
                .extracting(JoinAnswer::teamId, JoinAnswer::teamName)
                .containsExactly(wrens, "Wrens");
    }

    @Test
    void carriesAChainOfMergersToTheLastTeam() {
        var larks = Bench.teamId(bench.team("Larks"));
        var code = code(newts);
        merge(newts, wrens);
        assertThat(merge(wrens, larks)).hasStatusOk();
        assertThat(teacher.answer(join(code), JoinAnswer.class).teamId()).isEqualTo(larks);
    }

    @Test
    void joinsOnceHoweverOftenItIsSent() {
        assertThat(merge(newts, wrens)).hasStatusOk();
        assertThat(merge(newts, wrens)).hasStatusOk();
        teacher.problem(merge(newts, Bench.teamId(bench.team("Larks"))), ProblemCode.TEAM_MERGED);
        teacher.problem(merge(wrens, newts), ProblemCode.TEAM_MERGED);
    }

    @Test
    void refusesToJoinATeamToItselfOrToAnotherDay() {
        var elsewhere = Bench.teamId(new Bench(teacher.server(), teacher.json()).team("Larks"));
        for (var into : List.of(newts, elsewhere)) {
            assertThat(teacher.problem(merge(newts, into), ProblemCode.CHOICE_UNKNOWN)
                            .field())
                    .isEqualTo("into");
        }
    }

    @Test
    void joinsNoTeamsOnceResultsAreFinal() {
        assertThat(teacher.put(new FinalRequest(true, null), "/api/labdays/{id}/final", bench.day.id()))
                .hasStatusOk();
        teacher.problem(merge(newts, wrens), ProblemCode.LABDAY_FINAL);
    }

    @Test
    void takesWhatAPhoneOfTheJoinedTeamHeldFromBefore() {
        var phone = phoneOf(newts);
        var united = phoneOf(wrens);
        var known = bench.cell(phone, "N1");
        var reading = Bench.darkRequest(known, new Typed("3", "mV"));
        assertThat(phone.put(reading, "/api/readings/{id}", UUID.randomUUID())).hasStatusOk();
        merge(newts, wrens);

        var queued = united.put(Bench.cellRequest(newts, "N2"), "/api/cells/{id}", UUID.randomUUID());

        assertThat(teacher.answer(queued, CellAnswer.class).teamId()).isEqualTo(wrens);
        assertThat(united.put(reading, "/api/readings/{id}", UUID.randomUUID())).hasStatusOk();
    }

    @Test
    void hasRoomForTheCellsOfEachTeamInIt() {
        for (int i = 1; i <= 3; i++) {
            bench.cell(phoneOf(newts), "N" + i);
            bench.cell(phoneOf(wrens), "W" + i);
        }
        merge(newts, wrens);
        var larks = Bench.teamId(bench.team("Larks"));
        merge(larks, wrens);

        for (int i = 1; i <= 3; i++) {
            bench.cell(phoneOf(wrens), "L" + i);
        }

        var request = Bench.cellRequest(wrens, "L4");
        var full = teacher.problem(
                phoneOf(wrens).put(request, "/api/cells/{id}", UUID.randomUUID()), ProblemCode.CELLS_FULL);
        assertThat(full.limit()).isEqualTo("9");
        assertThat(teams())
                .singleElement()
                .satisfies(team -> assertThat(team.joined()).containsExactly(newts, larks));
    }

    @Test
    void takesHotWorkForDoneThatTheJoinedTeamWasSignedOffForBefore() {
        var phone = phoneOf(newts);
        var cell = bench.cell(phone, "N1");
        bench.signOff(phone, Zone.HEAT);
        var before = Instant.now();
        merge(newts, wrens);

        assertThat(baked(cell, before)).hasStatusOk();
        teacher.problem(baked(cell, Instant.now()), ProblemCode.ZONE_NOT_SIGNED_OFF);
    }

    @Test
    void movesHeaterPlacesTimersPhonesAndIncidents() {
        var phone = phoneOf(newts);
        var cell = bench.cell(phone, "N1");
        bench.signOff(phone, Zone.HEAT);
        var day = bench.day.id();
        phone.put(
                new HeaterSlotRequest(cell, "Plate A", 1, new Typed("450", "degC"), 30, null, null, null),
                "/api/heater-slots/{id}",
                UUID.randomUUID());
        teacher.put(new TimerRequest(day, "Your turn", 300, newts, null), "/api/timers/{id}", UUID.randomUUID());
        phone.put(new PhoneRequest(2, List.of()), "/api/phones/{id}", UUID.randomUUID());
        teacher.put(
                new IncidentRequest(day, newts, "glass", "A plate broke", "Swept up", null, Bench.NOTICED),
                "/api/incidents/{id}",
                UUID.randomUUID());

        merge(newts, wrens);

        var lesson = teacher.answer(phoneOf(wrens).get("/api/labdays/{id}/lesson", day), LessonAnswer.class);
        assertThat(lesson.slots()).extracting(HeaterSlotAnswer::teamId).containsExactly(wrens);
        assertThat(lesson.timers()).extracting(TimerAnswer::teamId).containsExactly(wrens);
        assertThat(teacher.answers(teacher.get("/api/labdays/{id}/phones", day), PhoneAnswer.class))
                .extracting(PhoneAnswer::teamId)
                .containsExactly(wrens);
        assertThat(teacher.answers(teacher.get("/api/labdays/{id}/incidents", day), IncidentAnswer.class))
                .extracting(IncidentAnswer::teamId)
                .containsExactly(wrens);
    }

    private MvcTestResult baked(UUID cell, Instant noticed) {
        var outcome = new OutcomeRequest(cell, "bake", true, null, null, null, noticed);
        return phoneOf(wrens).put(outcome, "/api/outcomes/{id}", UUID.randomUUID());
    }

    private MvcTestResult merge(UUID team, UUID into) {
        return teacher.put(new TeamMergerRequest(into), "/api/teams/{id}/merger", team);
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
