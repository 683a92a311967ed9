package org.berrywatt.server.access;

import java.time.Clock;
import java.util.Optional;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetupRequest;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The teachers' accounts. */
@Component
public class Teachers {

    private static final int LONGEST_NAME = 40;

    /** Of a random text that nobody has kept; ready-made, since making one takes as long as a sign-in. */
    private static final String NOBODYS_HASH =
            "{pbkdf2-sha512}8c107366030ec778176c821610c4945d9fcf0e5f7af58fc9476a33cc2bc1"
                    + "382840d3dad34c3a0be6f936909449e684b3feef0581dcb93101415b9615ab727ceec246e9ff661fafdf7d3ace25d6a591f8";

    private final TeacherRepository teachers;
    private final SetupKey setupKey;
    private final Clock clock;
    private final Passwords passwords = new Passwords();

    Teachers(TeacherRepository teachers, SetupKey setupKey, Clock clock) {
        this.teachers = teachers;
        this.setupKey = setupKey;
        this.clock = clock;
    }

    /** Whether the first teacher is still to come. */
    public boolean setupNeeded() {
        return teachers.count() == 0;
    }

    /**
     * Adds a teacher, as the demo day does.
     *
     * @throws Refusal {@code text.empty}, {@code text.tooLong}, {@code password.weak}, {@code password.guessable}
     */
    @Transactional
    public Caller.Teacher add(String name, String password) {
        check(name, password);
        return teachers.save(new Teacher(name, passwords.hash(password), clock.instant()))
                .asCaller();
    }

    /** The teacher of a name, or empty. */
    @Transactional(readOnly = true)
    public Optional<Caller.Teacher> find(String name) {
        return teachers.findByNameFolded(Teacher.fold(name)).map(Teacher::asCaller);
    }

    @Transactional
    Caller.Teacher setUp(SetupRequest request) {
        if (!setupNeeded()) {
            throw Refusal.of(ProblemCode.SETUP_DONE);
        }
        if (!setupKey.is(request.key())) {
            throw Refusal.of(ProblemCode.SIGN_IN_REFUSED).field("key");
        }
        return add(request.name(), request.password());
    }

    /**
     * The teacher of a name, who knows the password. Takes as long for a name that nobody has as for a wrong password.
     *
     * @throws Refusal {@code access.refused}
     */
    Teacher signIn(String name, String password) {
        var teacher = teachers.findByNameFolded(Teacher.fold(name));
        var hash = teacher.map(Teacher::passwordHash).orElse(NOBODYS_HASH);
        if (!passwords.matches(password, hash) || teacher.isEmpty()) {
            throw Refusal.of(ProblemCode.SIGN_IN_REFUSED);
        }
        return renewed(teacher.get(), password);
    }

    /**
     * The account of a name, for somebody who need not guess.
     *
     * @throws Refusal {@code account.unknown}, with the names that there are
     */
    Teacher named(String name) {
        return teachers.findByNameFolded(Teacher.fold(name))
                .orElseThrow(() -> Refusal.of(ProblemCode.ACCOUNT_UNKNOWN)
                        .field("name")
                        .with("names", String.join(", ", teachers.names())));
    }

    private Teacher renewed(Teacher teacher, String password) {
        if (!passwords.isOld(teacher.passwordHash())) {
            return teacher;
        }
        var hash = passwords.hash(password);
        if (teachers.replace(teacher.id(), teacher.passwordHash(), hash) == 1) {
            teacher.keep(hash);
        }
        return teacher;
    }

    private static void check(String name, String password) {
        if (name.isBlank()) {
            throw Refusal.of(ProblemCode.TEXT_EMPTY).field("name");
        }
        if (name.strip().length() > LONGEST_NAME) {
            throw Refusal.of(ProblemCode.TEXT_TOO_LONG)
                    .field("name")
                    .value(name)
                    .limit(LONGEST_NAME);
        }
        Passwords.check(password, name);
    }
}
