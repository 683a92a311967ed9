package org.berrywatt.server.access;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.junit.jupiter.api.Test;

class CallerTest {

    private final UUID team = UUID.randomUUID();
    private final UUID labDay = UUID.randomUUID();
    private final Caller nobody = new Caller.Nobody();
    private final Caller member = new Caller.TeamMember(team, labDay);
    private final Caller teacher = new Caller.Teacher(UUID.randomUUID(), "Quince");

    @Test
    void letsATeacherDoEverything() {
        assertThatCode(() -> {
                    teacher.requireTeacher();
                    teacher.requireTeam(team);
                    teacher.requireLabDay(labDay);
                })
                .doesNotThrowAnyException();
    }

    @Test
    void letsATeamActForItselfOnItsDay() {
        assertThatCode(() -> {
                    member.requireTeam(team);
                    member.requireLabDay(labDay);
                })
                .doesNotThrowAnyException();
    }

    @Test
    void doesNotLetATeamActForAnotherOneOrAsTeacher() {
        refuses(ProblemCode.NOT_ALLOWED, () -> member.requireTeam(UUID.randomUUID()));
        refuses(ProblemCode.NOT_ALLOWED, () -> member.requireLabDay(UUID.randomUUID()));
        refuses(ProblemCode.NOT_ALLOWED, member::requireTeacher);
    }

    @Test
    void asksNobodyToSignInFirst() {
        refuses(ProblemCode.SIGN_IN_NEEDED, () -> nobody.requireTeam(team));
        refuses(ProblemCode.SIGN_IN_NEEDED, () -> nobody.requireLabDay(labDay));
        refuses(ProblemCode.SIGN_IN_NEEDED, nobody::requireTeacher);
    }

    private static void refuses(ProblemCode code, ThrowingCallable act) {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(act)
                .extracting(Refusal::code)
                .isEqualTo(code);
    }
}
