package org.berrywatt.server.access;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Issues the cookie by which a browser is known again, across restarts of the server. */
@Component
public class Passes {

    private static final Duration VALIDITY = Duration.ofDays(120);
    private final PassRepository passes;
    private final TeacherRepository teachers;
    private final Clock clock;

    Passes(PassRepository passes, TeacherRepository teachers, Clock clock) {
        this.passes = passes;
        this.teachers = teachers;
        this.clock = clock;
    }

    /**
     * Makes this browser the caller's own. The controller sends the cookie as {@code Set-Cookie}; the browser's earlier
     * pass ends.
     *
     * @throws IllegalArgumentException for nobody
     */
    @Transactional
    public ResponseCookie issue(Caller holder, HttpServletRequest request) {
        var token = Token.random();
        revoke(request);
        passes.deleteExpired(clock.instant());
        passes.save(new Pass(token.hash(), holder, clock.instant(), VALIDITY));
        return PassCookie.holding(token, VALIDITY, request);
    }

    /** Signs every phone of a team out. */
    @Transactional
    public void endOfTeam(UUID teamId) {
        passes.deleteOfTeam(teamId);
    }

    /** Makes every phone of a team one of another team of the same day. */
    @Transactional
    public void moveTeam(UUID teamId, UUID into) {
        passes.moveTeam(teamId, into);
    }

    /** Ends this browser's pass; answers the cookie that makes it forget. */
    @Transactional
    ResponseCookie end(HttpServletRequest request) {
        revoke(request);
        return PassCookie.empty(request);
    }

    @Transactional(readOnly = true)
    Caller callerOf(HttpServletRequest request) {
        return PassCookie.of(request)
                .flatMap(token -> passes.findById(token.hash()))
                .filter(pass -> pass.isValidAt(clock.instant()))
                .map(this::holderOf)
                .orElse(new Caller.Nobody());
    }

    private Caller holderOf(Pass pass) {
        var teacherId = pass.teacherId();
        return teacherId == null
                ? pass.asTeamMember()
                : teachers.findById(teacherId).<Caller>map(Teacher::asCaller).orElse(new Caller.Nobody());
    }

    private void revoke(HttpServletRequest request) {
        PassCookie.of(request).ifPresent(token -> passes.deleteById(token.hash()));
    }
}
