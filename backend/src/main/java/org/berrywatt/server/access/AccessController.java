package org.berrywatt.server.access;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SetupRequest;
import org.berrywatt.contract.SignInRequest;
import org.berrywatt.contract.WhoAnswer;
import org.berrywatt.server.platform.BerrywattSettings;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Setting up the first teacher, signing in and out, and the question who I am. */
@RestController
@RequestMapping("/api/access")
class AccessController {

    private final Teachers teachers;
    private final Passes passes;
    private final Throttle throttle;
    private final BerrywattSettings settings;

    AccessController(Teachers teachers, Passes passes, Throttle throttle, BerrywattSettings settings) {
        this.teachers = teachers;
        this.passes = passes;
        this.throttle = throttle;
        this.settings = settings;
    }

    @GetMapping
    WhoAnswer who(Caller caller) {
        if (caller instanceof Caller.Teacher teacher) {
            return answer(teacher);
        }
        return caller instanceof Caller.TeamMember member ? answer("team", null, member) : answer("nobody", null, null);
    }

    @PostMapping("/setup")
    ResponseEntity<WhoAnswer> setUp(@RequestBody SetupRequest body, HttpServletRequest request) {
        var teacher = throttle.guard(request, () -> teachers.setUp(complete(body)));
        return with(passes.issue(teacher, request), answer(teacher));
    }

    @PostMapping("/sign-in")
    ResponseEntity<WhoAnswer> signIn(@RequestBody SignInRequest body, HttpServletRequest request) {
        var teacher = throttle.guard(request, whom(body), () -> tryAccount(body));
        return with(passes.issueTo(teacher, request), answer(teacher.asCaller()));
    }

    @PostMapping("/sign-out")
    ResponseEntity<WhoAnswer> signOut(HttpServletRequest request) {
        return with(passes.end(request), answer("nobody", null, null));
    }

    /** People type passwords into the field for names. */
    private String whom(SignInRequest body) {
        return Optional.ofNullable(body.name())
                .flatMap(teachers::find)
                .map(Journal::whom)
                .orElse("unknown name");
    }

    private Teacher tryAccount(SignInRequest body) {
        var name = need("name", body.name());
        var password = need("password", body.password());
        return throttle.guard(Throttle.Limit.ACCOUNT, Teacher.fold(name), () -> teachers.signIn(name, password));
    }

    private static SetupRequest complete(SetupRequest body) {
        return new SetupRequest(need("key", body.key()), need("name", body.name()), need("password", body.password()));
    }

    static String need(String field, @Nullable String value) {
        if (value == null) {
            throw Refusal.of(ProblemCode.VALUE_MISSING).field(field);
        }
        return value;
    }

    private static ResponseEntity<WhoAnswer> with(ResponseCookie cookie, WhoAnswer answer) {
        return ResponseEntity.ok()
                .header(HttpHeaders.SET_COOKIE, cookie.toString())
                .body(answer);
    }

    private WhoAnswer answer(Caller.Teacher teacher) {
        return answer("teacher", teacher.name(), null);
    }

    private WhoAnswer answer(String kind, @Nullable String name, Caller.@Nullable TeamMember member) {
        return new WhoAnswer(
                kind,
                name,
                member == null ? null : member.teamId(),
                member == null ? null : member.labDayId(),
                teachers.setupNeeded(),
                settings.isDemo());
    }
}
