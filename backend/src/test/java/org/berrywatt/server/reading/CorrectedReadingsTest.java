package org.berrywatt.server.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.berrywatt.server.reading.ReadingBench.READING;
import static org.berrywatt.server.reading.ReadingBench.correcting;
import static org.berrywatt.server.reading.ReadingBench.row;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.CurvePoint;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.ReadingAnswer;
import org.berrywatt.contract.ReadingRequest;
import org.berrywatt.contract.Typed;
import org.berrywatt.server.AtOnce;
import org.berrywatt.server.Bench;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import tools.jackson.databind.json.JsonMapper;

@ServerTest
class CorrectedReadingsTest {

    private final UUID id = UUID.randomUUID();
    private final ReadingBench at;
    private final Readings readings;

    @Autowired
    CorrectedReadingsTest(MockMvcTester server, JsonMapper json, Readings readings) {
        this.at = new ReadingBench(server, json);
        this.readings = readings;
    }

    @Test
    void keepsWhatACorrectionReplacesAndCountsWithTheCorrection() {
        var wrong = at.accepted(at.light("142"));
        var right = at.accepted(at.correction(wrong.id(), "412"));
        assertThat(at.listed(at.team))
                .extracting(ReadingAnswer::id, ReadingAnswer::voltageV, ReadingAnswer::replacedBy)
                .containsExactly(tuple(wrong.id(), 0.142, right.id()), tuple(right.id(), 0.412, null));
        assertThat(at.recorded(readings)).extracting(RecordedReading::id).containsExactly(right.id());
    }

    @Test
    void countsACorrectionForWhenAndByWhomTheCellWasRead() {
        var wrong = at.accepted(at.light("142"));
        var later = at.accepted(at.light("400"));
        var right =
                at.teacher.answer(at.teacher.put(at.correction(wrong.id(), "412"), READING, id), ReadingAnswer.class);
        assertThat(right.readAt()).isEqualTo(wrong.readAt()).isBefore(right.acceptedAt());
        assertThat(right.by()).isEqualTo("teacher");
        assertThat(at.recorded(readings))
                .extracting(RecordedReading::id, RecordedReading::readBy)
                .containsExactly(tuple(id, reader()), tuple(later.id(), reader()));
    }

    @Test
    void answersTheReplacedReadingAgainWithTheNameOfItsCorrection() {
        at.accepted(at.light("142"), id);
        var right = at.accepted(at.correction(id, "412"));
        assertThat(at.accepted(at.light("142"), id).replacedBy()).isEqualTo(right.id());
    }

    @Test
    void letsAReadingBeCorrectedOnce() {
        at.accepted(at.light("142"), id);
        assertThat(AtOnce.statuses(
                        List.of(() -> at.put(at.correction(id, "412")), () -> at.put(at.correction(id, "421")))))
                .containsExactlyInAnyOrder(200, 409);
        at.team.problem(at.put(at.correction(id, "422")), ProblemCode.REPLACED_ALREADY);
    }

    @Test
    void refusesToReplaceAReadingOfAnotherCell() {
        var other = at.bench.cell(at.team, "C2");
        at.accepted(Bench.darkRequest(other, new Typed("3", "mV")), id);
        at.team.problem(at.put(at.correction(id, "412")), ProblemCode.NOT_FOUND);
    }

    @Test
    void letsTheRowsOfASweepBeMendedAndKeepsTheEarlierOnes() {
        var wrong = at.accepted(sweep("330"));
        var right = at.accepted(correcting(sweep("380"), wrong.id(), "Digits swapped in row 2"));
        assertThat(right.reason()).isEqualTo("Digits swapped in row 2");
        assertThat(right.rows()).startsWith(row("1", "100", null), row("10", "380", null));
        assertThat(right.points()).contains(new CurvePoint(0.38, 38e-6));
        assertThat(at.listed(at.team))
                .extracting(ReadingAnswer::id, ReadingAnswer::replacedBy)
                .containsExactly(tuple(wrong.id(), right.id()), tuple(right.id(), null));
        assertThat(at.recorded(readings)).extracting(RecordedReading::id).containsExactly(right.id());
    }

    @Test
    void asksWhyTheRowsOfASweepAreMended() {
        var wrong = at.accepted(sweep("330"));
        var unfounded = at.refused(correcting(sweep("380"), wrong.id(), null), "value.missing");
        assertThat(unfounded.field()).isEqualTo("reason");
        assertThat(at.refused(correcting(sweep("380"), wrong.id(), " "), "text.empty")
                        .field())
                .isEqualTo("reason");
        assertThat(at.refused(correcting(sweep("380"), wrong.id(), "x".repeat(121)), "text.tooLong")
                        .limit())
                .isEqualTo("120");
    }

    private String reader() {
        return at.team.caller().signature();
    }

    private ReadingRequest sweep(String secondMillivolt) {
        return at.sweep(
                row("1", "100", null),
                row("10", secondMillivolt, null),
                row("2.2", "200", null),
                row("4.7", "300", null),
                row("100", "400", null));
    }
}
