package org.berrywatt.server.access;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.berrywatt.contract.NewPasswordRequest;
import org.berrywatt.contract.PasswordRequest;
import org.berrywatt.contract.SignOutRequest;
import org.berrywatt.contract.SignedInBrowser;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** What a teacher does with the own sign-in; this browser is signed in afterwards. */
@RestController
@RequestMapping("/api/access")
class AccountController {

    private final PasswordChange change;
    private final Passes passes;
    private final Throttle throttle;
    private final Journal journal;
    private final ForgottenPassword forgotten;

    AccountController(
            PasswordChange change, Passes passes, Throttle throttle, Journal journal, ForgottenPassword forgotten) {
        this.forgotten = forgotten;
        this.journal = journal;
        this.change = change;
        this.passes = passes;
        this.throttle = throttle;
    }

    /** Changes the teacher's password; an unfit new one does not count as a try. */
    @PutMapping("/password")
    ResponseEntity<Void> change(@RequestBody PasswordRequest body, Caller caller, HttpServletRequest request) {
        var teacher = caller.requireTeacher();
        var present = AccessController.need("present", body.present());
        var password = AccessController.need("password", body.password());
        change.to(password, proven(teacher, present, request));
        journal.tell(Journal.Event.PASSWORD_CHANGED, Journal.whom(teacher), request);
        return signedIn(teacher, request);
    }

    /** Sets a forgotten password anew, with the key from the server's own computer, and signs the teacher in. */
    @PostMapping("/new-password")
    ResponseEntity<Void> setAnew(@RequestBody NewPasswordRequest body, HttpServletRequest request) {
        var whole = new NewPasswordRequest(
                AccessController.need("key", body.key()),
                AccessController.need("name", body.name()),
                AccessController.need("password", body.password()));
        var teacher = throttle.guard(request, () -> forgotten.set(whole));
        journal.tell(Journal.Event.PASSWORD_CHANGED, Journal.whom(teacher), request);
        return signedIn(teacher, request);
    }

    private ResponseEntity<Void> signedIn(Caller.Teacher teacher, HttpServletRequest request) {
        return ResponseEntity.noContent()
                .header(HttpHeaders.SET_COOKIE, passes.issue(teacher, request).toString())
                .build();
    }

    /** Where the teacher is signed in. */
    @GetMapping("/browsers")
    List<SignedInBrowser> browsers(Caller caller, HttpServletRequest request) {
        return passes.browsersOf(caller.requireTeacher(), request);
    }

    /** Ends the teacher's pass in one other browser or in all; for whoever knows the password. */
    @PostMapping("/sign-out-elsewhere")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void signOutElsewhere(@RequestBody SignOutRequest body, Caller caller, HttpServletRequest request) {
        var teacher = caller.requireTeacher();
        proven(teacher, AccessController.need("present", body.present()), request);
        passes.endElsewhere(teacher, body.browser(), request);
    }

    /** The teacher by the password, of which a wrong one counts like a wrong sign-in. */
    private Teacher proven(Caller.Teacher teacher, String present, HttpServletRequest request) {
        return throttle.guard(
                request,
                Journal.whom(teacher),
                () -> throttle.guard(
                        Throttle.Limit.ACCOUNT, Teacher.fold(teacher.name()), () -> change.prove(teacher, present)));
    }
}
