package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotAnswer;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.LessonAnswer;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.Api;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class HeaterSlotsTest {

    private final Bench bench;
    private final Api sloe;
    private final Api elder;
    private final UUID s1;
    private final UUID e1;

    @Autowired
    HeaterSlotsTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        sloe = bench.team("Sloe");
        elder = bench.team("Elder");
        s1 = bench.cell(sloe, "S1");
        e1 = bench.cell(elder, "E1");
    }

    @Test
    void putsACellOnAHeaterNow() {
        var slot = answer(sloe, putIn(sloe, s1, "Plate A", 3));

        assertThat(slot.heater()).isEqualTo("Plate A");
        assertThat(slot.position()).isEqualTo(3);
        assertThat(slot.target()).isEqualTo(new Typed("450", "degC"));
        assertThat(slot.targetDegC()).isEqualTo(450);
        assertThat(Duration.between(slot.inAt(), slot.holdUntil())).isEqualTo(Duration.ofMinutes(50));
        assertThat(slot.outAt()).isNull();
        assertThat(slot.coolUntil()).isNull();
    }

    @Test
    void refusesAPositionThatHoldsACellAndSaysWhichOne() {
        answer(sloe, putIn(sloe, s1, "Plate A", 3));

        var problem = elder.problem(putIn(elder, e1, "plate a", 3), ProblemCode.HEATER_TAKEN);

        assertThat(problem.field()).isEqualTo("position");
        assertThat(problem.detail())
                .isEqualTo("Cell “S1” is already on Plate A, position 3."
                        + " Choose a free position, or take that cell out first.");
    }

    @Test
    void refusesACellThatIsOnAHeaterAlready() {
        answer(sloe, putIn(sloe, s1, "Plate A", 3));

        var problem = sloe.problem(putIn(sloe, s1, "Plate B", 1), ProblemCode.HEATER_CELL_ON);

        assertThat(problem.detail()).contains("“S1” is already on Plate A, position 3");
    }

    @Test
    void freesThePositionWhenTheCellIsTakenOut() {
        var slot = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        var out = answer(sloe, takeOut(sloe, slot.id(), null));

        assertThat(out.coolUntil())
                .isEqualTo(Objects.requireNonNull(out.outAt()).plus(Duration.ofMinutes(30)));
        assertThat(putIn(elder, e1, "Plate A", 3)).hasStatusOk();
    }

    @Test
    void keepsTheFirstTimeOutHoweverOftenItIsSent() {
        var slot = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        var first = answer(sloe, takeOut(sloe, slot.id(), null));

        assertThat(answer(sloe, takeOut(sloe, slot.id(), null))).isEqualTo(first);
    }

    @Test
    void takesOutAlsoWhileTheDayIsClosed() {
        var slot = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        bench.setEntry(false);

        assertThat(takeOut(sloe, slot.id(), null)).hasStatusOk();
        sloe.problem(putIn(elder, e1, "Plate A", 4), ProblemCode.LABDAY_CLOSED);
    }

    @Test
    void correctsAnEntryAndKeepsItsTimeIn() {
        var before = Instant.now().minusSeconds(600);
        var slot = answer(sloe, put(sloe, request(s1, "Plate A", 3, "450", before, null)));

        var corrected = answer(sloe, put(sloe, request(s1, "Plate A", 4, "500", null, slot.id())));

        assertThat(corrected.inAt()).isEqualTo(slot.inAt());
        assertThat(corrected.position()).isEqualTo(4);
        assertThat(slots()).containsExactly(corrected);
        sloe.problem(put(sloe, request(s1, "Plate A", 5, "500", null, slot.id())), ProblemCode.REPLACED_ALREADY);
        sloe.problem(takeOut(sloe, slot.id(), null), ProblemCode.REPLACED_ALREADY);
    }

    @Test
    void correctsWhatWasTakenOutWithoutTakingItsOldPosition() {
        var slot = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        answer(sloe, takeOut(sloe, slot.id(), null));
        answer(elder, putIn(elder, e1, "Plate A", 3));

        var corrected = answer(sloe, put(sloe, request(s1, "Plate A", 3, "430", null, slot.id())));

        assertThat(corrected.outAt()).isNotNull();
        assertThat(corrected.targetDegC()).isEqualTo(430);
    }

    @Test
    void holdsAWrongClockWithinEightHoursBeforeNow() {
        var future =
                answer(sloe, put(sloe, request(s1, "Plate A", 1, "450", Instant.parse("2199-01-01T00:00:00Z"), null)));
        var past = answer(
                elder, put(elder, request(e1, "Plate A", 2, "450", Instant.parse("1980-01-01T00:00:00Z"), null)));

        assertThat(future.inAt()).isBeforeOrEqualTo(Instant.now());
        assertThat(Duration.between(past.inAt(), future.inAt())).isBetween(Duration.ofHours(7), Duration.ofHours(8));
        assertThat(answer(elder, takeOut(elder, past.id(), Instant.parse("1980-01-01T00:00:00Z")))
                        .outAt())
                .isEqualTo(past.inAt());
    }

    @Test
    void storesOnceHoweverOftenItIsSent() {
        var id = UUID.randomUUID();
        var request = request(s1, "Plate A", 3, "450", null, null);

        var first = answer(sloe, sloe.put(request, "/api/heater-slots/{id}", id));

        assertThat(answer(sloe, sloe.put(request, "/api/heater-slots/{id}", id)))
                .isEqualTo(first);
        assertThat(slots()).hasSize(1);
    }

    @Test
    void givesAPositionToOneOfTwoThatWantItAtOnce() {
        assertThat(AtOnce.statuses(List.of(() -> putIn(sloe, s1, "Plate A", 3), () -> putIn(elder, e1, "Plate A", 3))))
                .containsExactlyInAnyOrder(200, 409);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 450, 50, position",
        "25, 450, 50, position",
        "1, 49, 50, target",
        "1, 651, 50, target",
        "1, hot, 50, target",
        "1, 450, 0, holdMinutes",
        "1, 450, 481, holdMinutes",
    })
    void refusesWhatNoHeaterCanDo(int position, String target, int hold, String field) {
        var request = new HeaterSlotRequest(s1, "Plate A", position, new Typed(target, "degC"), hold, null, null);
        var answer = put(sloe, request);

        assertThat(answer).hasStatus(422);
        assertThat(answer).bodyJson().extractingPath("$.field").isEqualTo(field);
    }

    private List<HeaterSlotAnswer> slots() {
        return sloe.answer(sloe.get("/api/labdays/{id}/lesson", bench.day.id()), LessonAnswer.class)
                .slots();
    }

    private static MvcTestResult putIn(Api by, UUID cell, String heater, int position) {
        return put(by, request(cell, heater, position, "450", null, null));
    }

    private static MvcTestResult put(Api by, HeaterSlotRequest request) {
        return by.put(request, "/api/heater-slots/{id}", UUID.randomUUID());
    }

    private static MvcTestResult takeOut(Api by, UUID slot, @Nullable Instant at) {
        return by.put(new HeaterOutRequest(at), "/api/heater-slots/{id}/out", slot);
    }

    private static HeaterSlotRequest request(
            UUID cell, String heater, int position, String target, @Nullable Instant inAt, @Nullable UUID replaces) {
        return new HeaterSlotRequest(cell, heater, position, new Typed(target, "degC"), 50, inAt, replaces);
    }

    private static HeaterSlotAnswer answer(Api by, MvcTestResult result) {
        return by.answer(result, HeaterSlotAnswer.class);
    }
}
