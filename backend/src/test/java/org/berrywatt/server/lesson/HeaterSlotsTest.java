package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.berrywatt.server.lesson.Heaters.answer;
import static org.berrywatt.server.lesson.Heaters.put;
import static org.berrywatt.server.lesson.Heaters.putIn;
import static org.berrywatt.server.lesson.Heaters.request;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.HeaterSlotAnswer;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
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
        bench.signOff(sloe, Zone.HEAT);
        bench.signOff(elder, Zone.HEAT);
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

    /** A phone without a network tells late what has happened: nothing of it may be lost. */
    @Test
    void keepsWhatAPhoneTellsLateAlsoWhereThePlaceIsTakenByThen() {
        var there = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        var late = there.inAt().minusSeconds(90);

        var slot = answer(elder, put(elder, request(e1, "Plate A", 3, "450", late, null)));

        assertThat(slot.inAt()).isEqualTo(late);
        assertThat(Heaters.of(bench.teacher, bench.day.id()))
                .extracting(HeaterSlotAnswer::label, HeaterSlotAnswer::position)
                .containsExactlyInAnyOrder(tuple("S1", 3), tuple("E1", 3));
        assertThat(answer(elder, Heaters.takeOut(elder, slot.id(), null)).outAt())
                .isNotNull();
    }

    @Test
    void returnsALateEntryOfACellThatTheTeacherPutOnMeanwhileToBecomeItsCorrection() {
        var there = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        var id = UUID.randomUUID();
        var late = there.inAt().minusSeconds(90);
        sloe.problem(
                sloe.put(request(s1, "Plate A", 4, "450", late, null), "/api/heater-slots/{id}", id),
                ProblemCode.HEATER_CELL_ON);

        var corrected = answer(
                sloe, sloe.put(request(s1, "Plate A", 4, "450", late, there.id()), "/api/heater-slots/{id}", id));

        assertThat(corrected.position()).isEqualTo(4);
        assertThat(corrected.inAt()).isEqualTo(late);
    }

    @Test
    void refusesACellThatIsOnAHeaterAlready() {
        answer(sloe, putIn(sloe, s1, "Plate A", 3));

        var problem = sloe.problem(putIn(sloe, s1, "Plate B", 1), ProblemCode.HEATER_CELL_ON);

        assertThat(problem.detail()).contains("“S1” is already on Plate A, position 3");
    }

    @Test
    void storesOnceHoweverOftenItIsSent() {
        var id = UUID.randomUUID();
        var request = request(s1, "Plate A", 3, "450", null, null);

        var first = answer(sloe, sloe.put(request, "/api/heater-slots/{id}", id));

        assertThat(answer(sloe, sloe.put(request, "/api/heater-slots/{id}", id)))
                .isEqualTo(first);
        assertThat(Heaters.of(sloe, bench.day.id())).hasSize(1);
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
        var request = new HeaterSlotRequest(s1, "Plate A", position, new Typed(target, "degC"), hold, null, null, null);
        var answer = put(sloe, request);

        assertThat(answer).hasStatus(422);
        assertThat(answer).bodyJson().extractingPath("$.field").isEqualTo(field);
    }
}
