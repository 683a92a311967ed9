package org.berrywatt.server.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Which dangerous stages count as done. Minutes are minutes after noon, by the server's clock. */
@ServerTest
class GateTest {

    private final HotWork work;

    @Autowired
    GateTest(ApplicationContext server) {
        work = new HotWork(server);
    }

    @Test
    void refusesAHotStageOfATeamThatIsNotSignedOff() {
        assertThatThrownBy(() -> work.passes("bake", 30, 30)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.code()).isEqualTo(ProblemCode.ZONE_NOT_SIGNED_OFF);
            assertThat(refusal.values())
                    .containsEntry("field", "stage")
                    .containsEntry("value", "heat")
                    .containsEntry("zone", "Hot plate");
        });
        assertThat(work.cells.find(work.cell).orElseThrow().outcomes()).isEmpty();
    }

    @Test
    void countsOnlyTheTeamsOwnSignOff() {
        work.signOff(work.day.team("Elder"), Zone.HEAT, 10, 60);
        work.assertRefused("bake", 30, 30);
    }

    @Test
    void countsOnlyTheZoneThatIsNeeded() {
        work.signOff(work.teamId, Zone.FLAME, 10, 60);
        work.assertRefused("bake", 30, 30);
    }

    @Test
    void needsEveryZoneThatARecipeBrings() {
        var burner = UUID.randomUUID();
        work.register(burner, "C2", List.of(new BuildValue("heater", "burnerOnGauze", null)));
        work.signOff(work.teamId, Zone.HEAT, 10, 60);
        assertThatThrownBy(() -> work.outcome(burner, "bake", null, null, null, work.team, 30, 30))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.values()).containsEntry("zone", "Flame"));
        work.signOff(work.teamId, Zone.FLAME, 31, 60);
        assertThatCode(() -> work.outcome(burner, "bake", null, null, null, work.team, 32, 32))
                .doesNotThrowAnyException();
    }

    @Test
    void asksForNothingWhereNothingIsHotNorCorrodes() {
        var cold = UUID.randomUUID();
        work.register(cold, "C2", List.of(new BuildValue("counterElectrode", "pencil", null)));
        assertThatCode(() -> work.outcome(cold, "counterElectrode", null, null, null, work.team, 30, 30))
                .doesNotThrowAnyException();
        assertThatCode(() -> work.passes("film", 30, 30)).doesNotThrowAnyException();
    }

    @Test
    void takesEveryFailureSignedOffOrNot() {
        assertThatCode(() -> work.outcome(work.cell, "bake", "glassCracked", null, null, work.team, 30, 30))
                .doesNotThrowAnyException();
    }

    @Test
    void takesAnOverrideForASignOff() {
        var points = List.of("looksCold");
        var request = new SignOffRequest(work.teamId, "heat", points, 60, "The technician stands beside them");
        work.safety.putSignOff(UUID.randomUUID(), request, Rehearsal.TEACHER, HotWork.minute(10));
        assertThatCode(() -> work.passes("bake", 30, 30)).doesNotThrowAnyException();
    }

    @Test
    void takesATeachersOwnEntryWithAReason() {
        assertThatThrownBy(() -> work.outcome(work.cell, "bake", null, null, null, Rehearsal.TEACHER, 30, 30))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.ZONE_REASON_NEEDED));
        assertThatCode(() ->
                        work.outcome(work.cell, "bake", null, "I unloaded it myself", null, Rehearsal.TEACHER, 30, 30))
                .doesNotThrowAnyException();
    }

    @Test
    void asksAgainWhenAFailureIsCorrectedIntoAPass() {
        var failed = work.outcome(work.cell, "bake", "glassCracked", null, null, work.team, 30, 30);
        assertThatThrownBy(() -> work.outcome(work.cell, "bake", null, null, failed, work.team, 31, 31))
                .isInstanceOf(Refusal.class);
    }
}
