package org.berrywatt.server.access;

import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Another password for an account, and the end of the passes that the old one opened. */
@Component
class PasswordChange {

    private final TeacherRepository teachers;
    private final Holders holders;
    private final Passwords passwords = new Passwords();

    PasswordChange(TeacherRepository teachers, Holders holders) {
        this.teachers = teachers;
        this.holders = holders;
    }

    /**
     * A teacher who is signed in, and knows the password.
     *
     * @throws Refusal {@code password.wrong}
     */
    Teacher prove(Caller.Teacher caller, String present) {
        return teachers.findById(caller.id())
                .filter(teacher -> passwords.matches(present, teacher.passwordHash()))
                .orElseThrow(PasswordChange::wrong);
    }

    /**
     * Keeps a new password and ends every pass of the account, that of the browser that asks for it, too.
     *
     * @throws Refusal {@code password.weak}, {@code password.guessable}, {@code text.tooLong}; {@code password.wrong} when another
     *     change was faster
     */
    @Transactional
    void to(String password, Teacher proven) {
        Passwords.check(password, proven.name());
        if (teachers.replace(proven.id(), proven.passwordHash(), passwords.hash(password)) == 0) {
            throw wrong();
        }
        holders.removeTeacher(proven.id());
    }

    private static Refusal wrong() {
        return Refusal.of(ProblemCode.PASSWORD_WRONG).field("present");
    }
}
