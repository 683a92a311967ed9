package org.berrywatt.server.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import org.berrywatt.safety.Zone;
import org.berrywatt.server.Rehearsal;
import org.berrywatt.server.ServerTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** When a sign-off covers what was done. Minutes are minutes after noon, by the server's clock. */
@ServerTest
class GateMomentsTest {

    private final HotWork work;

    @Autowired
    GateMomentsTest(ApplicationContext server) {
        work = new HotWork(server);
    }

    @Test
    void takesItOnceTheTeamIsSignedOff() {
        work.signOff(work.teamId, Zone.HEAT, 10, 60);
        work.passes("bake", 30, 30);
        assertThat(work.cells.find(work.cell).orElseThrow().outcomes())
                .singleElement()
                .matches(outcome -> outcome.passed() && outcome.stage().equals("bake"));
    }

    @Test
    void endsWithTheLesson() {
        work.signOff(work.teamId, Zone.HEAT, 10, 60);
        assertThatCode(() -> work.passes("bake", 69, 69)).doesNotThrowAnyException();
        work.assertRefused("bake", 70, 70);
    }

    @Test
    void takesWhatAPhoneNoticedUnderTheSignOffAndSentAfterIt() {
        work.signOff(work.teamId, Zone.HEAT, 10, 60);
        assertThatCode(() -> work.passes("bake", 65, 120)).doesNotThrowAnyException();
    }

    @Test
    void refusesWhatAPhoneNoticedBeforeTheSignOffAndSentUnderIt() {
        work.signOff(work.teamId, Zone.HEAT, 30, 60);
        work.assertRefused("bake", 20, 40);
        assertThatCode(() -> work.passes("bake", 41, 41)).doesNotThrowAnyException();
    }

    @Test
    void forgivesAPhoneThatIsALittleSlow() {
        work.signOff(work.teamId, Zone.HEAT, 30, 60);
        assertThatCode(() -> work.passes("bake", 28, 31)).doesNotThrowAnyException();
    }

    @Test
    void goesByTheServersClockWhenAPhonesClockCannotBeRight() {
        work.signOff(work.teamId, Zone.HEAT, 30, 60);
        assertThatCode(() -> work.passes("bake", 2000, 40)).doesNotThrowAnyException();
        assertThatCode(() -> work.passes("bake", -2000, 40)).doesNotThrowAnyException();
        work.assertRefused("bake", 2000, 95);
    }

    @Test
    void endsWithAWithdrawal() {
        var id = work.signOff(work.teamId, Zone.HEAT, 10, 60);
        work.safety.withdraw(id, Rehearsal.TEACHER, HotWork.minute(20));
        assertThatCode(() -> work.passes("bake", 19, 25)).doesNotThrowAnyException();
        work.assertRefused("bake", 25, 25);
    }

    @Test
    void letsATeamCorrectTheNoteOfAStagePassedUnderASignOffThatIsOver() {
        work.signOff(work.teamId, Zone.HEAT, 10, 60);
        var first = work.passes("bake", 30, 30);
        assertThatCode(() -> work.outcome(work.cell, "bake", null, "a little grey", first, work.team, 200, 200))
                .doesNotThrowAnyException();
    }
}
