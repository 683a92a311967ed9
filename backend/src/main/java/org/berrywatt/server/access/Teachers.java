package org.berrywatt.server.access;

import java.time.Clock;
import java.util.Optional;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetupRequest;
import org.berrywatt.server.platform.Refusal;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The teachers' accounts. */
@Component
public class Teachers {

    private static final int SHORTEST_PASSWORD = 10;
    private static final int LONGEST_NAME = 40;

    /** Of a random text that nobody has kept; ready-made, since making one takes as long as a sign-in. */
    private static final String NOBODYS_HASH = "{bcrypt}$2a$10$OihsOnIwiPcg/kC0LpG69ebEhb1Q1W199tWQwEVnCayqUEQGa2gq2";

    private final TeacherRepository teachers;
    private final SetupKey setupKey;
    private final Clock clock;
    private final PasswordEncoder passwords = PasswordEncoderFactories.createDelegatingPasswordEncoder();

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
     * @throws Refusal {@code text.empty}, {@code text.tooLong}, {@code password.weak}
     */
    @Transactional
    public Caller.Teacher add(String name, String password) {
        check(name, password);
        return teachers.save(new Teacher(name, passwords.encode(password), clock.instant()))
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

    /** Takes as long for a name that nobody has as for a wrong password. */
    Caller.Teacher signIn(String name, String password) {
        var teacher = teachers.findByNameFolded(Teacher.fold(name));
        var hash = teacher.map(Teacher::passwordHash).orElse(NOBODYS_HASH);
        if (!passwords.matches(password, hash) || teacher.isEmpty()) {
            throw Refusal.of(ProblemCode.SIGN_IN_REFUSED);
        }
        return teacher.get().asCaller();
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
        if (password.length() < SHORTEST_PASSWORD) {
            throw Refusal.of(ProblemCode.PASSWORD_WEAK).field("password").limit(SHORTEST_PASSWORD);
        }
    }
}
