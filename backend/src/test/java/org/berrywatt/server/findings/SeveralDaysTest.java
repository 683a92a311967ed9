package org.berrywatt.server.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.FindingsDaysRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Remark;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

@ServerTest
class SeveralDaysTest {

    @Autowired
    private ApplicationContext server;

    @Autowired
    private SeveralDays days;

    @Test
    void putsDaysTogetherAndKeepsThemApart() {
        var one = day("A1");
        var other = day("B1");

        var question = question(Measure.POWER, one, other);

        assertThat(question.all().rows())
                .extracting(
                        StudyRow::label,
                        row -> row.day().key(),
                        row -> row.team().name())
                .containsExactly(tuple("A1", one.toString(), "Larch"), tuple("B1", other.toString(), "Larch"));
        assertThat(question.all().rows().get(0).team())
                .isNotEqualTo(question.all().rows().get(1).team());
    }

    @Test
    void letsCellsWaitThatHaveNoControlCellAndSaysSo() {
        var question = question(Measure.RATIO_TO_CONTROL, day("A1"));

        assertThat(question.all().rows()).extracting(StudyRow::figure).containsOnlyNulls();
        assertThat(question.notes()).extracting(Remark::key).containsExactly("finding.days.noControl");
    }

    @Test
    void refusesADayThatIsNotThere() {
        assertThatThrownBy(() -> days.known(new FindingsDaysRequest(List.of(UUID.randomUUID()), "power", null)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.NOT_FOUND));
        assertThatThrownBy(() -> days.known(new FindingsDaysRequest(List.of(), "power", null)))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.CALCULATION_LIST_LENGTH));
    }

    private FindingsAnswers question(Measure measure, UUID... wanted) {
        return days.question(List.of(wanted), measure, Filter.none());
    }

    private UUID day(String label) {
        var day = new Rehearsal(server);
        var yard = day.sunnyStation("Yard");
        day.light(yard, "1000 W/m2");
        var cell = day.cell(day.team("Larch"), label, "15 x 15 mm", new BuildValue("dyeSource", "hibiscus", null));
        day.dark(cell, "0 mV", "0 uA");
        day.lit(cell, yard, "400 mV", "0.900 mA");
        return day.labDayId;
    }
}
