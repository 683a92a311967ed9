package org.berrywatt.server.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.CellRequest;
import org.berrywatt.contract.OutcomeRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SignOffRequest;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.cell.Cells;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** When a dangerous stage counts as done. Minutes are minutes after noon, by the server's clock. */
@ServerTest
class GateTest {

    private static final Instant NOON = Instant.parse("2026-05-05T12:00:00Z");

    private final Cells cells;
    private final Safety safety;
    private final Rehearsal day;
    private final UUID teamId;
    private final Caller team;
    private final UUID cell = UUID.randomUUID();

    @Autowired
    GateTest(ApplicationContext server, Cells cells, Safety safety) {
        this.cells = cells;
        this.safety = safety;
        this.day = new Rehearsal(server);
        this.teamId = day.team("Sloe");
        this.team = new Caller.TeamMember(teamId, day.labDayId);
        register(cell, "C1", List.of());
    }

    @Test
    void refusesAHotStageOfATeamThatIsNotSignedOff() {
        assertThatThrownBy(() -> passes("bake", 30, 30)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.code()).isEqualTo(ProblemCode.ZONE_NOT_SIGNED_OFF);
            assertThat(refusal.values())
                    .containsEntry("field", "stage")
                    .containsEntry("value", "heat")
                    .containsEntry("zone", "Hot plate");
        });
        assertThat(cells.find(cell).orElseThrow().outcomes()).isEmpty();
    }

    @Test
    void takesItOnceTheTeamIsSignedOff() {
        signOff(teamId, Zone.HEAT, 10, 60);
        passes("bake", 30, 30);
        assertThat(cells.find(cell).orElseThrow().outcomes())
                .singleElement()
                .matches(outcome -> outcome.passed() && outcome.stage().equals("bake"));
    }

    @Test
    void endsWithTheLesson() {
        signOff(teamId, Zone.HEAT, 10, 60);
        assertThatCode(() -> passes("bake", 69, 69)).doesNotThrowAnyException();
        assertRefused("bake", 70, 70);
    }

    @Test
    void takesWhatAPhoneNoticedUnderTheSignOffAndSentAfterIt() {
        signOff(teamId, Zone.HEAT, 10, 60);
        assertThatCode(() -> passes("bake", 65, 120)).doesNotThrowAnyException();
    }

    @Test
    void refusesWhatAPhoneNoticedBeforeTheSignOffAndSentUnderIt() {
        signOff(teamId, Zone.HEAT, 30, 60);
        assertRefused("bake", 20, 40);
        assertThatCode(() -> passes("bake", 41, 41)).doesNotThrowAnyException();
    }

    @Test
    void forgivesAPhoneThatIsALittleSlow() {
        signOff(teamId, Zone.HEAT, 30, 60);
        assertThatCode(() -> passes("bake", 28, 31)).doesNotThrowAnyException();
    }

    @Test
    void goesByTheServersClockWhenAPhonesClockCannotBeRight() {
        signOff(teamId, Zone.HEAT, 30, 60);
        assertThatCode(() -> passes("bake", 2000, 40)).doesNotThrowAnyException();
        assertThatCode(() -> passes("bake", -2000, 40)).doesNotThrowAnyException();
        assertRefused("bake", 2000, 95);
    }

    @Test
    void countsOnlyTheTeamsOwnSignOff() {
        signOff(day.team("Elder"), Zone.HEAT, 10, 60);
        assertRefused("bake", 30, 30);
    }

    @Test
    void countsOnlyTheZoneThatIsNeeded() {
        signOff(teamId, Zone.FLAME, 10, 60);
        assertRefused("bake", 30, 30);
    }

    @Test
    void needsEveryZoneThatARecipeBrings() {
        var burner = UUID.randomUUID();
        register(burner, "C2", List.of(new BuildValue("heater", "burnerOnGauze", null)));
        signOff(teamId, Zone.HEAT, 10, 60);
        assertThatThrownBy(() -> outcome(burner, "bake", null, null, null, team, 30, 30))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.values()).containsEntry("zone", "Flame"));
        signOff(teamId, Zone.FLAME, 31, 60);
        assertThatCode(() -> outcome(burner, "bake", null, null, null, team, 32, 32))
                .doesNotThrowAnyException();
    }

    @Test
    void asksForNothingWhereNothingIsHotNorCorrodes() {
        var cold = UUID.randomUUID();
        register(cold, "C2", List.of(new BuildValue("counterElectrode", "pencil", null)));
        assertThatCode(() -> outcome(cold, "counterElectrode", null, null, null, team, 30, 30))
                .doesNotThrowAnyException();
        assertThatCode(() -> passes("film", 30, 30)).doesNotThrowAnyException();
    }

    @Test
    void takesEveryFailureSignedOffOrNot() {
        assertThatCode(() -> outcome(cell, "bake", "glassCracked", null, null, team, 30, 30))
                .doesNotThrowAnyException();
    }

    @Test
    void takesAnOverrideForASignOff() {
        var points = List.of("looksCold");
        var request = new SignOffRequest(teamId, "heat", points, 60, "The technician stands beside them");
        safety.putSignOff(UUID.randomUUID(), request, Rehearsal.TEACHER, minute(10));
        assertThatCode(() -> passes("bake", 30, 30)).doesNotThrowAnyException();
    }

    @Test
    void endsWithAWithdrawal() {
        var id = signOff(teamId, Zone.HEAT, 10, 60);
        safety.withdraw(id, Rehearsal.TEACHER, minute(20));
        assertThatCode(() -> passes("bake", 19, 25)).doesNotThrowAnyException();
        assertRefused("bake", 25, 25);
    }

    @Test
    void takesATeachersOwnEntryWithAReason() {
        assertThatThrownBy(() -> outcome(cell, "bake", null, null, null, Rehearsal.TEACHER, 30, 30))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.ZONE_REASON_NEEDED));
        assertThatCode(() -> outcome(cell, "bake", null, "I unloaded it myself", null, Rehearsal.TEACHER, 30, 30))
                .doesNotThrowAnyException();
    }

    @Test
    void letsATeamCorrectTheNoteOfAStagePassedUnderASignOffThatIsOver() {
        signOff(teamId, Zone.HEAT, 10, 60);
        var first = passes("bake", 30, 30);
        assertThatCode(() -> outcome(cell, "bake", null, "a little grey", first, team, 200, 200))
                .doesNotThrowAnyException();
    }

    @Test
    void asksAgainWhenAFailureIsCorrectedIntoAPass() {
        var failed = outcome(cell, "bake", "glassCracked", null, null, team, 30, 30);
        assertThatThrownBy(() -> outcome(cell, "bake", null, null, failed, team, 31, 31))
                .isInstanceOf(Refusal.class);
    }

    private void assertRefused(String stage, int noticed, int accepted) {
        assertThatThrownBy(() -> passes(stage, noticed, accepted))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.code()).isEqualTo(ProblemCode.ZONE_NOT_SIGNED_OFF));
    }

    private UUID passes(String stage, int noticed, int accepted) {
        return outcome(cell, stage, null, null, null, team, noticed, accepted);
    }

    private UUID outcome(
            UUID cellId,
            String stage,
            @Nullable String failure,
            @Nullable String note,
            @Nullable UUID replaces,
            Caller caller,
            int noticed,
            int accepted) {
        var id = UUID.randomUUID();
        var request = new OutcomeRequest(cellId, stage, failure == null, failure, note, replaces, minute(noticed));
        cells.putOutcome(id, request, caller, minute(accepted));
        return id;
    }

    private UUID signOff(UUID signed, Zone zone, int from, int minutes) {
        var id = UUID.randomUUID();
        var request = new SignOffRequest(signed, zone.key(), zone.points(), minutes, null);
        safety.putSignOff(id, request, Rehearsal.TEACHER, minute(from));
        return id;
    }

    private void register(UUID id, String label, List<BuildValue> recipe) {
        cells.put(id, new CellRequest(teamId, label, recipe, null, minute(0)), team, minute(0));
    }

    private static Instant minute(int afterNoon) {
        return NOON.plus(afterNoon, ChronoUnit.MINUTES);
    }
}
