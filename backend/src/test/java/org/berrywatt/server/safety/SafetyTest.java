package org.berrywatt.server.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.OutcomeAnswer;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SafetyAnswer;
import org.berrywatt.contract.SignOffAnswer;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.contract.SignOffsAnswer;
import org.berrywatt.safety.Hazard;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class SafetyTest {

    private static final String SIGN_OFF = "/api/sign-offs/{id}";
    private final Bench bench;
    private final JdbcClient database;
    private final Api team;
    private final UUID id = UUID.randomUUID();

    @Autowired
    SafetyTest(MockMvcTester server, JsonMapper json, JdbcClient database) {
        this.bench = new Bench(server, json);
        this.database = database;
        this.team = bench.team("Sloe");
    }

    @Test
    void signsATeamOffUntilTheLessonEnds() {
        var answer = signOff(request(Zone.HEAT, Zone.HEAT.points(), 45, null));
        assertThat(Duration.between(answer.signedAt(), answer.validUntil())).hasMinutes(45);
        assertThat(answer.points()).isEqualTo(Zone.HEAT.points());
        assertThat(listed(team)).containsExactly(answer);
    }

    @Test
    void holdsForADoubleLessonUnlessSaidOtherwise() {
        var answer = signOff(request(Zone.HEAT, Zone.HEAT.points(), null, null));
        assertThat(Duration.between(answer.signedAt(), answer.validUntil())).hasMinutes(90);
    }

    @Test
    void signsOffOnceHoweverOftenItIsSent() {
        var request = request(Zone.HEAT, Zone.HEAT.points(), 45, null);
        assertThat(signOff(request)).isEqualTo(signOff(request));
        assertThat(listed(team)).hasSize(1);
        var other = bench.teacher.put(request(Zone.FLAME, Zone.FLAME.points(), 45, null), SIGN_OFF, id);
        bench.teacher.problem(other, ProblemCode.ID_REUSED);
    }

    @Test
    void refusesABriefingWithOpenPointsUnlessAReasonIsGiven() {
        var refused = bench.teacher.put(request(Zone.HEAT, List.of("looksCold"), 45, null), SIGN_OFF, id);
        assertThat(refused).hasStatus(422);
        assertThat(bench.teacher
                        .problem(refused, ProblemCode.ZONE_BRIEFING_OPEN)
                        .detail())
                .isEqualTo("The briefing for “Hot plate” has points that are not ticked: 4. Go through them and tick"
                        + " them, or let the team begin without and give your reason.");
        var override = signOff(request(Zone.HEAT, List.of("looksCold"), 45, "I stand beside them"));
        assertThat(override.reason()).isEqualTo("I stand beside them");
        assertThat(override.points()).containsExactly("looksCold");
    }

    @ParameterizedTest(name = "zone {0}, point {1}, minutes {2}, reason {3} is refused with {4} at {5}")
    @CsvSource({
        "picnic, looksCold, 45, , choice.unknown, zone",
        "heat, tray, 45, , choice.unknown, points[0]",
        "heat, looksCold, 0, because, quantity.impossible, minutes",
        "heat, looksCold, 481, because, quantity.impossible, minutes",
        "heat, looksCold, 45, ok, text.tooShort, reason",
        "heat, looksCold, 45, ' ', text.empty, reason"
    })
    void refusesWhatCannotBe(
            String zone, String point, int minutes, @Nullable String reason, String code, String field) {
        var request = new SignOffRequest(Bench.teamId(team), zone, List.of(point), minutes, reason);
        var refused = bench.teacher.put(request, SIGN_OFF, id);
        assertThat(refused).hasStatus(422);
        assertThat(bench.teacher.problem(refused, code).field()).isEqualTo(field);
    }

    @Test
    void withdrawsASignOffOnceAndKeepsIt() {
        signOff(request(Zone.HEAT, Zone.HEAT.points(), 45, null));
        var first = withdraw();
        assertThat(first.withdrawnAt()).isNotNull();
        assertThat(withdraw()).isEqualTo(first);
        assertThat(listed(bench.teacher)).containsExactly(first);
    }

    @Test
    void showsATeamItsOwnSignOffsAndTheTeacherAll() {
        signOff(request(Zone.HEAT, Zone.HEAT.points(), 45, null));
        assertThat(listed(bench.team("Elder"))).isEmpty();
        assertThat(listed(bench.teacher)).hasSize(1);
    }

    @Test
    void tellsATeamToCallTheTeacherAndTakesItsEntryAfterTheSignOff() {
        var cell = bench.cell(team, "C1");
        var bake = new OutcomeRequest(cell, "bake", true, null, null, null, Bench.NOTICED);
        var refused = team.put(bake, "/api/outcomes/{id}", UUID.randomUUID());
        assertThat(refused).hasStatus(409);
        assertThat(team.problem(refused, ProblemCode.ZONE_NOT_SIGNED_OFF).detail())
                .isEqualTo(
                        "Your team was not signed off for this when the step was done: Hot plate. Call your teacher for"
                                + " the safety briefing; what you entered is kept, and you can send it again once you are signed"
                                + " off.");
        signOff(request(Zone.HEAT, Zone.HEAT.points(), 45, null));
        assertThat(team.answer(team.put(bake, "/api/outcomes/{id}", UUID.randomUUID()), OutcomeAnswer.class)
                        .passed())
                .isTrue();
    }

    @Test
    void takesSignOffsWhileTheDayIsClosed() {
        bench.setEntry(false);
        assertThat(signOff(request(Zone.HEAT, Zone.HEAT.points(), 45, null)).withdrawnAt())
                .isNull();
    }

    @Test
    void goesWithItsDay() {
        signOff(request(Zone.HEAT, Zone.HEAT.points(), 45, null));
        database.sql("delete from lab_day where id = ?").param(bench.day.id()).update();
        assertThat(database.sql("select count(*) from sign_off where id = ?")
                        .param(id)
                        .query(Integer.class)
                        .single())
                .isZero();
    }

    @Test
    void tellsEveryZoneAndHazardOfTheScience() {
        var catalogue = team.answer(team.get("/api/safety"), SafetyAnswer.class);
        assertThat(catalogue.zones()).hasSize(Zone.values().length);
        assertThat(catalogue.hazards()).hasSize(Hazard.values().length);
        assertThat(catalogue.hazards())
                .filteredOn(hazard -> hazard.key().equals("nitricAcid"))
                .singleElement()
                .satisfies(hazard -> assertThat(hazard.codes()).contains("H314"));
        assertThat(team.get("/api/safety")).headers().containsHeader("ETag");
    }

    private SignOffRequest request(Zone zone, List<String> points, @Nullable Integer minutes, @Nullable String reason) {
        return new SignOffRequest(Bench.teamId(team), zone.key(), points, minutes, reason);
    }

    private SignOffAnswer signOff(SignOffRequest request) {
        return bench.teacher.answer(bench.teacher.put(request, SIGN_OFF, id), SignOffAnswer.class);
    }

    private SignOffAnswer withdraw() {
        return bench.teacher.answer(bench.teacher.put("", "/api/sign-offs/{id}/withdrawal", id), SignOffAnswer.class);
    }

    private List<SignOffAnswer> listed(Api caller) {
        return caller.answer(caller.get("/api/labdays/{id}/sign-offs", bench.day.id()), SignOffsAnswer.class)
                .signOffs();
    }
}
