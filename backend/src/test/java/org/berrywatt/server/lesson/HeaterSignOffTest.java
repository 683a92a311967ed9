package org.berrywatt.server.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.berrywatt.contract.BuildValue;
import org.berrywatt.contract.HeaterSlotRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.Typed;
import org.berrywatt.safety.Zone;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.berrywatt.server.access.Caller;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Who may put a cell on a heater. Minutes are minutes after noon, by the server's clock. */
@ServerTest
class HeaterSignOffTest {

    private final HeaterSlots heaters;
    private final Rehearsal day;
    private final UUID teamId;
    private final Caller team;
    private final UUID cell;

    @Autowired
    HeaterSignOffTest(ApplicationContext server, HeaterSlots heaters) {
        this.heaters = heaters;
        day = new Rehearsal(server);
        teamId = day.team("Sloe");
        team = new Caller.TeamMember(teamId, day.labDayId);
        cell = day.cell(teamId, "S1", null);
    }

    @Test
    void refusesATeamThatIsNotSignedOffAndKeepsThePlaceFree() {
        assertThatThrownBy(() -> putOn(cell, team, 10, 10, null)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.code()).isEqualTo(ProblemCode.ZONE_NOT_SIGNED_OFF);
            assertThat(refusal.values())
                    .containsEntry("field", "cellId")
                    .containsEntry("value", "heat")
                    .containsEntry("zone", "Hot plate");
        });
        day.minute(20).signedOff(teamId, Zone.HEAT);
        assertThatCode(() -> putOn(cell, team, 20, 20, null)).doesNotThrowAnyException();
    }

    @Test
    void goesByTheTimeAtWhichItWasPutOnAndNotSent() {
        day.minute(10).signedOff(teamId, Zone.HEAT);
        assertThatCode(() -> putOn(cell, team, 30, 200, null)).doesNotThrowAnyException();
    }

    @Test
    void refusesWhatWasPutOnBeforeTheSignOff() {
        day.minute(30).signedOff(teamId, Zone.HEAT);
        assertRefused(ProblemCode.ZONE_NOT_SIGNED_OFF, () -> putOn(cell, team, 20, 40, null));
    }

    @Test
    void asksForTheFlameToo() {
        var burner = day.cell(teamId, "S2", null, new BuildValue("heater", "burnerOnGauze", null));
        day.signedOff(teamId, Zone.HEAT);
        assertRefused(ProblemCode.ZONE_NOT_SIGNED_OFF, () -> putOn(burner, team, 10, 10, null));
        day.signedOff(teamId, Zone.FLAME);
        assertThatCode(() -> putOn(burner, team, 10, 10, null)).doesNotThrowAnyException();
    }

    @Test
    void asksForTheHeatWhateverTheRecipeSays() {
        var unbaked = day.cell(teamId, "S2", null, new BuildValue("heater", "none", null));
        assertRefused(ProblemCode.ZONE_NOT_SIGNED_OFF, () -> putOn(unbaked, team, 10, 10, null));
    }

    @Test
    void takesATeachersOwnEntryWithAReason() {
        assertRefused(ProblemCode.ZONE_REASON_NEEDED, () -> putOn(cell, Rehearsal.TEACHER, 10, 10, null));
        assertRefused(ProblemCode.ZONE_REASON_NEEDED, () -> putOn(cell, Rehearsal.TEACHER, 10, 10, "ok"));
        assertThatCode(() -> putOn(cell, Rehearsal.TEACHER, 10, 10, "I put it on myself"))
                .doesNotThrowAnyException();
    }

    @Test
    void takesNoReasonFromATeam() {
        assertRefused(ProblemCode.ZONE_NOT_SIGNED_OFF, () -> putOn(cell, team, 10, 10, "We are careful"));
    }

    @Test
    void asksForNothingWhenAnEntryIsCorrected() {
        var first = putOn(cell, Rehearsal.TEACHER, 10, 10, "I put it on myself");
        assertThatCode(() -> put(cell, team, 20, 20, first, null)).doesNotThrowAnyException();
    }

    private static void assertRefused(ProblemCode code, Runnable work) {
        assertThatThrownBy(work::run)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(code));
    }

    private UUID putOn(UUID cellId, Caller by, int noticed, int accepted, @Nullable String note) {
        return put(cellId, by, noticed, accepted, null, note);
    }

    private UUID put(
            UUID cellId, Caller by, int noticed, int accepted, @Nullable UUID replaces, @Nullable String note) {
        var id = UUID.randomUUID();
        var request = new HeaterSlotRequest(
                cellId, "Plate A", 1, new Typed("450", "degC"), 30, minute(noticed), replaces, note);
        heaters.put(id, request, by, minute(accepted));
        return id;
    }

    private static Instant minute(int afterNoon) {
        return Rehearsal.NOON.plus(afterNoon, ChronoUnit.MINUTES);
    }
}
