package org.berrywatt.server.access;

import org.berrywatt.contract.NewPasswordRequest;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.KeyInHome;
import org.berrywatt.server.platform.Refusal;
import org.springframework.stereotype.Component;

/** A new password for whoever can read what is in the server's home, without the one until now. */
@Component
class ForgottenPassword {

    private final KeyInHome key;
    private final Teachers teachers;
    private final PasswordChange change;

    ForgottenPassword(KeyInHome key, Teachers teachers, PasswordChange change) {
        this.change = change;
        this.key = key;
        this.teachers = teachers;
    }

    /**
     * Sets the password of an account and ends its passes. The key is good for once; a name or password that will not do leaves
     * it as it is.
     *
     * @throws Refusal {@code access.refused} for a key that is not the one, is over or was used; {@code account.unknown};
     *     {@code password.weak}, {@code password.guessable}, {@code text.tooLong}
     */
    Caller.Teacher set(NewPasswordRequest request) {
        if (!key.opens(request.key())) {
            throw wrongKey();
        }
        var teacher = teachers.named(request.name());
        Passwords.check(request.password(), teacher.name());
        if (!key.spend()) {
            throw wrongKey();
        }
        change.to(request.password(), teacher);
        return teacher.asCaller();
    }

    private static Refusal wrongKey() {
        return Refusal.of(ProblemCode.SIGN_IN_REFUSED).field("key");
    }
}
