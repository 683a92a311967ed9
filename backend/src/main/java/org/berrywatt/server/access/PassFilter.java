package org.berrywatt.server.access;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.authentication.preauth.PreAuthenticatedAuthenticationToken;
import org.springframework.web.filter.OncePerRequestFilter;

/** Knows the browser again by its pass. */
class PassFilter extends OncePerRequestFilter {

    private final Passes passes;
    private final Journal journal;

    PassFilter(Passes passes, Journal journal) {
        this.passes = passes;
        this.journal = journal;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var caller = passes.callerOf(request);
        if (!(caller instanceof Caller.Nobody)) {
            SecurityContextHolder.setContext(new SecurityContextImpl(known(caller)));
        }
        chain.doFilter(request, response);
        if (response.getStatus() == HttpServletResponse.SC_FORBIDDEN) {
            journal.tell(Journal.Event.NOT_ALLOWED, Journal.whom(CallerArgument.caller()), request);
        }
    }

    private static PreAuthenticatedAuthenticationToken known(Caller caller) {
        var role = caller instanceof Caller.Teacher ? "ROLE_TEACHER" : "ROLE_TEAM";
        return new PreAuthenticatedAuthenticationToken(caller, "", AuthorityUtils.createAuthorityList(role));
    }
}
