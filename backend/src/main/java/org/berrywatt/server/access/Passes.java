package org.berrywatt.server.access;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.contract.SignedInBrowser;
import org.berrywatt.server.platform.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Issues the cookie by which a browser is known again, across restarts of the server. */
@Component
public class Passes {

    private static final Duration VALIDITY = Duration.ofDays(120);
    private final Holders holders;
    private final TeacherRepository teachers;
    private final Journal journal;
    private final Clock clock;

    Passes(Holders holders, TeacherRepository teachers, Journal journal, Clock clock) {
        this.holders = holders;
        this.journal = journal;
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
        var now = clock.instant();
        revoke(request);
        holders.removeExpired(now);
        holders.add(token, holder, now, now.plus(VALIDITY), BrowserName.of(request.getHeader(HttpHeaders.USER_AGENT)));
        journal.tell(Journal.Event.NEW_PASS, Journal.whom(holder), request);
        return PassCookie.holding(token, VALIDITY, request);
    }

    /**
     * The same for a teacher who has just shown the password. The password cannot change meanwhile: whoever signs in with the
     * old one at the moment of a change has a pass that ends with the others, or none.
     *
     * @throws Refusal {@code access.refused} when the password is another one by now
     */
    @Transactional
    ResponseCookie issueTo(Teacher proven, HttpServletRequest request) {
        return teachers.lock(proven.id(), proven.passwordHash())
                .map(teacher -> issue(teacher.asCaller(), request))
                .orElseThrow(() -> Refusal.of(ProblemCode.SIGN_IN_REFUSED));
    }

    /** Where a teacher is signed in, this browser first. */
    List<SignedInBrowser> browsersOf(Caller.Teacher teacher, HttpServletRequest request) {
        return holders.browsersOf(teacher.id(), here(request), clock.instant());
    }

    /** Ends a teacher's pass in another browser, or in all others when none is named; one that has ended stays so. */
    @Transactional
    void endElsewhere(Caller.Teacher teacher, @Nullable UUID browser, HttpServletRequest request) {
        if (browser == null) {
            holders.removeTeacherBut(here(request), teacher.id());
        } else {
            holders.removeBrowser(browser, here(request), teacher.id());
        }
        journal.tell(Journal.Event.SIGNED_OUT_ELSEWHERE, Journal.whom(teacher), request);
    }

    private static String here(HttpServletRequest request) {
        return PassCookie.of(request).map(Token::hash).orElse("");
    }

    /** Signs every phone of a team out. */
    @Transactional
    public void endOfTeam(UUID teamId) {
        holders.removeTeam(teamId);
    }

    /** Makes every phone of a team one of another team of the same day. */
    @Transactional
    public void moveTeam(UUID teamId, UUID into) {
        holders.moveTeam(teamId, into);
    }

    /** Ends this browser's pass; answers the cookie that makes it forget. */
    @Transactional
    ResponseCookie end(HttpServletRequest request) {
        revoke(request);
        return PassCookie.empty(request);
    }

    Caller callerOf(HttpServletRequest request) {
        return PassCookie.of(request)
                .map(token -> holders.of(token, clock.instant()))
                .orElse(new Caller.Nobody());
    }

    private void revoke(HttpServletRequest request) {
        PassCookie.of(request).ifPresent(holders::remove);
    }
}
