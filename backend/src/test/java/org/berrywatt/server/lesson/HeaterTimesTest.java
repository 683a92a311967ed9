package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.berrywatt.server.lesson.Heaters.answer;
import static org.berrywatt.server.lesson.Heaters.put;
import static org.berrywatt.server.lesson.Heaters.putIn;
import static org.berrywatt.server.lesson.Heaters.request;
import static org.berrywatt.server.lesson.Heaters.takeOut;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.UUID;
import org.berrywatt.contract.HeaterOutRequest;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Api;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class HeaterTimesTest {

    private final Bench bench;
    private final Api sloe;
    private final Api elder;
    private final UUID s1;
    private final UUID e1;

    @Autowired
    HeaterTimesTest(MockMvcTester server, JsonMapper json) {
        bench = new Bench(server, json);
        sloe = bench.team("Sloe");
        elder = bench.team("Elder");
        s1 = bench.cell(sloe, "S1");
        e1 = bench.cell(elder, "E1");
        bench.signOff(sloe, Zone.HEAT);
        bench.signOff(elder, Zone.HEAT);
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
        var id = UUID.randomUUID();
        var request = new HeaterOutRequest(slot.id(), null);

        var first = answer(sloe, sloe.put(request, "/api/heater-outs/{id}", id));

        assertThat(answer(sloe, sloe.put(request, "/api/heater-outs/{id}", id))).isEqualTo(first);
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
        var before = Instant.now().minusSeconds(60);
        var slot = answer(sloe, put(sloe, request(s1, "Plate A", 3, "450", before, null)));

        var corrected = answer(sloe, put(sloe, request(s1, "Plate A", 4, "500", null, slot.id())));

        assertThat(corrected.inAt()).isEqualTo(slot.inAt());
        assertThat(corrected.position()).isEqualTo(4);
        assertThat(Heaters.of(sloe, bench.day.id())).containsExactly(corrected);
        sloe.problem(put(sloe, request(s1, "Plate A", 5, "500", null, slot.id())), ProblemCode.REPLACED_ALREADY);
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
        var past = answer(bench.teacher, put(bench.teacher, longAgo(e1)));

        assertThat(future.inAt()).isBeforeOrEqualTo(Instant.now());
        assertThat(Duration.between(past.inAt(), future.inAt())).isBetween(Duration.ofHours(7), Duration.ofHours(8));
        assertThat(answer(elder, takeOut(elder, past.id(), Instant.parse("1980-01-01T00:00:00Z")))
                        .outAt())
                .isEqualTo(past.inAt());
    }

    @Test
    void takesWhatAPhoneNotedWithoutANetworkWithItsOwnTimes() {
        var now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        var slot = answer(sloe, put(sloe, request(s1, "Plate A", 3, "450", now.minusSeconds(60), null)));

        var out = answer(sloe, takeOut(sloe, slot.id(), now.minusSeconds(20)));

        assertThat(out.inAt()).isEqualTo(now.minusSeconds(60));
        assertThat(out.outAt()).isEqualTo(now.minusSeconds(20));
    }

    @Test
    void takesOffWhatWasCorrectedMeanwhile() {
        var slot = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        var corrected = answer(bench.teacher, put(bench.teacher, request(s1, "Plate B", 1, "450", null, slot.id())));

        var out = answer(sloe, takeOut(sloe, slot.id(), null));

        assertThat(out.id()).isEqualTo(corrected.id());
        assertThat(out.outAt()).isNotNull();
        assertThat(Heaters.of(sloe, bench.day.id())).containsExactly(out);
    }

    @Test
    void holdsACorrectedTimeInBeforeTheTimeOut() {
        var slot = answer(sloe, putIn(sloe, s1, "Plate A", 3));
        var out = answer(sloe, takeOut(sloe, slot.id(), null));

        var corrected = answer(sloe, put(sloe, request(s1, "Plate A", 3, "450", Instant.now(), slot.id())));

        assertThat(corrected.inAt()).isEqualTo(out.outAt());
    }

    @Test
    void refusesToTakeOffWhatIsOnNoHeater() {
        assertThat(sloe.problem(takeOut(sloe, UUID.randomUUID(), null), ProblemCode.NOT_FOUND)
                        .field())
                .isEqualTo("slotId");
    }

    /** By the teacher, with a reason, since nobody was signed off then. */
    private static HeaterSlotRequest longAgo(UUID cell) {
        var inAt = Instant.parse("1980-01-01T00:00:00Z");
        return new HeaterSlotRequest(cell, "Plate A", 2, new Typed("450", "degC"), 50, inAt, null, "As rehearsed");
    }
}
